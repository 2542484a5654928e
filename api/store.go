package api

import (
	"bytes"
	"sync"

	"github.com/hashicorp/golang-lru/v2/simplelru"
	"golang.org/x/sync/singleflight"
)

// store keeps answers that were made, as many bytes of them as it may, the ones
// asked for last. What is asked for by many at once is made once. A spelling of a
// request leads to the answer of its canonical form, so that one that comes again
// needs no reading.
type store struct {
	most int // bytes; 0 keeps nothing

	lock   sync.Mutex
	kept   *simplelru.LRU[string, entry]
	bytes  int
	flight singleflight.Group
}

// entry is an answer, or the key of one, or what is known of one without its body.
type entry struct {
	answer *answer
	as     string
	held   *answer
	weight int
}

func newStore(most int) *store {
	s := &store{most: most}
	// The list is bounded by bytes; this bound on entries is never reached.
	kept, err := simplelru.NewLRU(max(1, most), func(_ string, e entry) { s.bytes -= e.weight })
	if err != nil {
		panic("api: " + err.Error()) // the size is positive
	}
	s.kept = kept
	return s
}

// overhead is about what an entry costs beside its texts.
const overhead = 400

// get gives the answer kept under a key, or makes it and keeps it. Errors are not
// kept. Nobody may change the answer.
func (s *store) get(key string, make func() (*answer, error)) (*answer, error) {
	if a := s.find(key); a != nil {
		return a, nil
	}
	made, err, _ := s.flight.Do(key, func() (any, error) {
		if a := s.find(key); a != nil {
			return a, nil
		}
		a, err := make()
		if err != nil {
			return nil, err
		}
		a.pack()
		a.body = bytes.Clone(a.body) // without the room that was left for more
		s.keep(key, entry{answer: a, weight: overhead + len(key) + len(a.body) + len(a.packed)})
		return a, nil
	})
	if err != nil {
		return nil, err
	}
	return made.(*answer), nil
}

// find is the answer that a key leads to, or nil.
func (s *store) find(key string) *answer {
	s.lock.Lock()
	defer s.lock.Unlock()
	e, ok := s.kept.Get(key)
	if ok && e.answer == nil {
		e, _ = s.kept.Get(e.as)
	}
	return e.answer
}

// alias lets a key lead to the answer of another.
func (s *store) alias(key, as string) {
	if key != as {
		s.keep(key, entry{as: as, weight: overhead + len(key) + len(as)})
	}
}

// hold remembers an answer without a body, for the next client that has it.
func (s *store) hold(key string, a *answer) {
	s.keep(key, entry{held: a, weight: overhead + len(key) + len(a.location)})
}

// holds is what is known of an answer without its body, or nil.
func (s *store) holds(key string) *answer {
	s.lock.Lock()
	defer s.lock.Unlock()
	e, _ := s.kept.Get(key)
	return e.held
}

func (s *store) keep(key string, e entry) {
	if e.weight > s.most/8 {
		return // one large answer is not to drive out many
	}
	s.lock.Lock()
	defer s.lock.Unlock()
	s.kept.Remove(key)
	s.kept.Add(key, e)
	for s.bytes += e.weight; s.bytes > s.most; {
		s.kept.RemoveOldest()
	}
}

// size is how many entries are kept, and how many bytes they take.
func (s *store) size() (entries, bytes int) {
	s.lock.Lock()
	defer s.lock.Unlock()
	return s.kept.Len(), s.bytes
}
