package laws

import (
	"math/rand/v2"
	"runtime"
	"runtime/debug"
	"slices"
	"sync"

	"modeler/arithmetic"
	"modeler/golden/problems"
	"modeler/models"
)

// turn is a kind of problem and a model that tells some problems of that kind.
type turn struct {
	model *models.Model
	kind  arithmetic.Kind
}

// turns lists every kind of problem with every model that tells problems of it,
// found by trying. A model that is new is found too.
func turns() []turn {
	const tries = 300 // of each kind
	var list []turn
	d := problems.Deal(0)
	for _, kind := range problems.Kinds {
		left := slices.Clone(models.All)
		for range tries {
			p := d.Of(kind)
			left = slices.DeleteFunc(left, func(m *models.Model) bool {
				if m.Fits(p) != nil {
					return false
				}
				list = append(list, turn{m, kind})
				return true
			})
		}
	}
	return list
}

// Deal makes count random problems, as many for each kind of problem and model
// that tells it, and has look see each with that model. It uses all cores; look is
// called from several goroutines at once. The same seed deals the same problems on
// every machine.
func Deal(seed uint64, count int, look func(*models.Model, arithmetic.Problem)) {
	const batches = 40
	defer debug.SetGCPercent(debug.SetGCPercent(400)) // many small pictures, each soon forgotten
	all := turns()
	next := make(chan int)
	var done sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		done.Go(func() {
			for batch := range next {
				d := &problems.Dealer{Rand: rand.New(rand.NewPCG(seed, uint64(batch)))}
				for i := batch; i < count; i += batches {
					t := all[i%len(all)]
					if p, fits := t.deal(d); fits {
						look(t.model, p)
					}
				}
			}
		})
	}
	for batch := range batches {
		next <- batch
	}
	close(next)
	done.Wait()
}

// deal makes a problem of the kind that fits the model; where that is rare, fits
// may be false.
func (t turn) deal(d *problems.Dealer) (p arithmetic.Problem, fits bool) {
	const tries = 120
	for range tries {
		if p = d.Of(t.kind); t.model.Fits(p) == nil {
			return p, true
		}
	}
	return p, false
}
