module modeler

go 1.26

require (
	github.com/ajstarks/svgo v0.0.0-20211024235047-1546f124cd8b // indirect
	github.com/shopspring/decimal v1.6.0 // indirect
)
