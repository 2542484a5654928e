package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// splitRole is the role of the addend that is split, keptRole that of the other.
func splitRole(s arithmetic.SplitNumber) scene.Role {
	return [...]scene.Role{scene.First, scene.Second}[s.At]
}

func keptRole(s arithmetic.SplitNumber) scene.Role {
	return [...]scene.Role{scene.Second, scene.First}[s.At]
}

// TenLay lays out an addend.
func TenLay(m arithmetic.LayAmount, s arithmetic.SplitNumber) Told {
	t := Told{
		Title: "Lay out " + g(m.Amount.N),
		Hands: Say("Put ", In(amount(m.Amount).Role, Count(m.Amount.N, "counter")), " on a plate."),
		Ask:   Say("How many more does " + g(m.Amount.N) + " need to make 10?"),
		Desc:  scene.Same(Count(m.Amount.N, "counter") + " on a plate."),
	}
	if m.At == 1 {
		t.Hands = Say("Put ", In(amount(m.Amount).Role, Count(m.Amount.N, "counter")), " on another plate.")
		t.Ask = Say("Which of the two numbers is nearer to 10?")
		if s.Kept == s.Split {
			t.Ask = Say("Which of the two could you split to make a 10?")
		}
		first, second := s.Kept, s.Split
		if s.At == 0 {
			first, second = second, first
		}
		t.Desc = scene.Same(Count(first, "counter") + " on one plate and " + g(second) + " on another.")
	}
	return t
}

// TenSplit splits the smaller addend.
func TenSplit(s arithmetic.SplitNumber) Told {
	role := splitRole(s)
	return Told{
		Title: "Split " + g(s.Split),
		Hands: Say(In(keptRole(s), g(s.Kept)), " needs "+g(s.Need)+" more to make 10. Split ", In(role, g(s.Split)), " into ", In(role, g(s.Need)), " and ", In(role, g(s.Rest)), "."),
		Ask:   Say("What does " + g(s.Kept) + " need to make 10?"),
		Desc:  scene.Same("A number bond under " + g(s.Split) + ": its parts are " + g(s.Need) + " and " + g(s.Rest) + "."),
	}
}

// TenFill fills up the ten.
func TenFill(m arithmetic.FillTen, s arithmetic.SplitNumber) Told {
	return Told{
		Title: "Make 10",
		Hands: sentence("Slide ", In(splitRole(s), g(m.Need)), " over to fill the empty places: ", In(keptRole(s), g(m.Kept)), " + ", In(splitRole(s), g(m.Need)), " = 10"),
		Ask:   Say("Are all ten places full?"),
		Desc:  scene.Same("The plate with " + g(m.Kept) + " has " + g(m.Need) + " more now: " + g(m.Kept) + " + " + g(m.Need) + " = 10. " + g(s.Rest) + " " + areIs(s.Rest) + " on the other plate."),
	}
}

// TenAdd adds the rest.
func TenAdd(m arithmetic.AddToTen, s arithmetic.SplitNumber) Told {
	return Told{
		Title: "Add the rest to 10",
		Hands: sentence("10 and ", In(splitRole(s), g(m.Rest)), " make ", In(scene.Result, g(m.Sum))),
		Ask:   Say("How much is 10 and " + g(m.Rest) + "?"),
		Desc: scene.Telling{
			Shown:  "A full ten and " + g(m.Rest) + " more: 10 + " + g(m.Rest) + " = " + g(m.Sum) + ".",
			Hidden: "A full ten and " + g(m.Rest) + " more. How many are there?",
		},
	}
}

// TenWhole describes the whole story.
func TenWhole(p arithmetic.Problem, s arithmetic.SplitNumber, m arithmetic.AddToTen) scene.Telling {
	bond := p.Left.String() + ". A number bond splits " + g(s.Split) + " into " + g(s.Need) + " and " + g(s.Rest) + ". " + g(s.Kept) + " + " + g(s.Need) + " = 10. "
	return scene.Telling{
		Shown:  bond + "10 + " + g(m.Rest) + " = " + g(m.Sum) + ".",
		Hidden: bond + "How much is 10 and " + g(m.Rest) + "?",
	}
}
