package heat

import (
	"math"
	"slices"
)

// State is a body at one moment, all in C. SurfaceC is the middle of the nearest face.
type State struct {
	CoreC, MeanC, SurfaceC float64
}

// Plus adds a body's own excess, K, to its temperatures.
func (s State) Plus(excess State) State {
	return State{s.CoreC + excess.CoreC, s.MeanC + excess.MeanC, s.SurfaceC + excess.SurfaceC}
}

// Point is a place of a State.
type Point uint8

// The places of a State.
const (
	Core Point = iota
	Mean
	Surface
)

// Of is the temperature at p, C.
func (s State) Of(p Point) float64 {
	switch p {
	case Mean:
		return s.MeanC
	case Surface:
		return s.SurfaceC
	}
	return s.CoreC
}

// Walk follows a body of constant properties through stages by sums of separable modes. Each stage
// has its ambient temperature and surface coefficient. It is exact apart from truncation: under
// 0.001 K at Fo = alpha t/L^2 above 0.01, 0.003 K from 0.005 (computed against finite volumes).
// Below that the core ignores the new stage, and mean and surface are good to about 1 % of the
// step.
//
// Time counts from now, which Advance moves; Stage, SetScale, SetMaterial and Restart act now and
// may be repeated: the last one counts. The zero Walk must be started. A Walk reuses its memory. It
// is not safe for concurrent use, and must not be copied once started.
type Walk struct {
	dirs       [3]direction
	n, nearest int
	k, alpha   float64
	h, scale   float64
	ambient    float64
	staged     bool
	terms      []term
	bases      [3]int // places in cache

	// The moment before the current stage, to begin it again.
	before        []term
	beforeBases   [3]int
	beforeAmbient float64

	cache [12]basis
	next  int

	// Solved, if set, is where modes not among the Walk's own are looked up and kept.
	Solved *Solved
}

// Solved caches the last modes, for Walks with the same Biot numbers. The zero Solved is ready.
// Walks that share one must not run at the same time.
type Solved struct {
	kept [32]basis
	next int
}

func (s *Solved) basis(d int, bi float64) *basis {
	for i := range s.kept {
		if b := &s.kept[i]; b.d == d && b.bi == bi {
			return b
		}
	}
	b := &s.kept[s.next]
	s.next = (s.next + 1) % len(s.kept)
	b.fill(d, bi)
	return b
}

// Start sets a body to an even temperature t0C at time 0, with conductivity k in W/(m K) and
// diffusivity alpha in m2/s. It reports false, and changes nothing, unless all are finite, and the
// body's dimensions, k and alpha above 0.
func (w *Walk) Start(b Body, k, alpha, t0C float64) bool {
	if !finite(t0C) || !positive(k) || !positive(alpha) {
		return false
	}
	dirs, n, nearest, ok := b.directions()
	if !ok {
		return false
	}
	w.dirs, w.n, w.nearest = dirs, n, nearest
	w.k, w.alpha, w.scale, w.staged = k, alpha, 1, false
	w.level(t0C)
	return true
}

// level makes the field even at tC.
func (w *Walk) level(tC float64) {
	w.before, w.beforeAmbient = w.before[:0], tC
	w.terms = w.terms[:0]
	if !w.staged {
		w.ambient = tC
		return
	}
	w.enter()
}

// Stage begins a stage now: surroundings at ambientC and a surface
// coefficient h, W/(m2 K), from 0 (insulated) to +Inf (surface held at
// ambientC). It reports false, and changes nothing, for other figures.
func (w *Walk) Stage(ambientC, h float64) bool {
	if !finite(ambientC) || !(h >= 0) || w.n == 0 {
		return false
	}
	w.ambient, w.h, w.staged = ambientC, h, true
	w.enter()
	return true
}

// SetScale multiplies h, from the current stage on, by factor, above 0;
// 1 at Start. A probe reading acts through it: see ScaleFor.
func (w *Walk) SetScale(factor float64) bool {
	if !positive(factor) {
		return false
	}
	w.scale = factor
	if w.staged {
		w.enter()
	}
	return true
}

// SetMaterial changes conductivity, W/(m K), and diffusivity, m2/s, from now on.
func (w *Walk) SetMaterial(k, alpha float64) bool {
	if !positive(k) || !positive(alpha) {
		return false
	}
	w.k, w.alpha = k, alpha
	if w.staged {
		w.enter()
	}
	return true
}

// Restart gives the mass another shape now, even at its volume mean: it was sheeted, divided, mixed
// or shaped and so turned over. The stage goes on. It reports false for a bad body.
func (w *Walk) Restart(b Body) bool {
	dirs, n, nearest, ok := b.directions()
	if !ok || w.n == 0 {
		return false
	}
	mean := w.At(0).MeanC
	w.dirs, w.n, w.nearest = dirs, n, nearest
	w.level(mean)
	return true
}

// At is the state the given seconds from now, if the stage lasts that
// long. Times below 0 count as 0. It allocates and changes nothing.
func (w *Walk) At(seconds float64) State {
	if !(seconds > 0) {
		seconds = 0
	}
	var f [3]fade
	var fo [3]float64
	for i := range w.n {
		fo[i] = w.alpha * seconds / (w.dirs[i].half * w.dirs[i].half)
		f[i].set(w.basis(i), fo[i])
	}
	sum := State{w.ambient, w.ambient, w.ambient}
	for j := range w.terms {
		t := &w.terms[j]
		core, mean, surf := t.amplitude, t.amplitude, t.amplitude
		for i := range w.n {
			c, m, s := t.v[i].value(w.basis(i), &f[i], fo[i])
			if i == w.nearest {
				surf *= s
			} else {
				surf *= c
			}
			core, mean = core*c, mean*m
			for range w.dirs[i].count - 1 {
				core, mean, surf = core*c, mean*m, surf*c
			}
		}
		sum.CoreC += core
		sum.MeanC += mean
		sum.SurfaceC += surf
	}
	return sum
}

// Advance moves now on by the given seconds and gives the state there.
// Times that are negative or not finite count as 0.
func (w *Walk) Advance(seconds float64) State {
	if !positive(seconds) {
		seconds = 0
	}
	state := w.At(seconds)
	if !w.staged {
		return state
	}
	w.before, w.beforeBases, w.beforeAmbient = w.before[:0], w.bases, w.ambient
	var f [3]fade
	for i := range w.n {
		f[i].set(w.basis(i), w.alpha*seconds/(w.dirs[i].half*w.dirs[i].half))
	}
	kept := w.terms[:0]
	for _, t := range w.terms {
		size := math.Abs(t.amplitude)
		for i := range w.n {
			v := &t.v[i]
			reach := 0.0
			for n := range modes {
				v.c[n] *= f[i].mode[n]
				reach += math.Abs(v.c[n])
			}
			v.mean *= f[i].mean
			v.surf *= f[i].surf
			v.born += w.alpha * seconds / (w.dirs[i].half * w.dirs[i].half)
			for range w.dirs[i].count {
				size *= reach
			}
		}
		if size > 1e-7 { // K; a term below it will never be felt again
			kept = append(kept, t)
		}
	}
	w.terms = kept
	w.fold()
	w.before = append(w.before, w.terms...)
	return state
}

// fold merges the old terms of a one-direction body into one, where sums of terms are terms. Fresh
// ones still have their cores to themselves.
func (w *Walk) fold() {
	if w.n > 1 || w.dirs[0].count > 1 {
		return
	}
	kept, into := w.terms[:0], -1
	for _, t := range w.terms {
		if into < 0 || t.v[0].born < 4*untouched {
			if into < 0 && t.v[0].born >= 4*untouched {
				into = len(kept)
			}
			kept = append(kept, t)
			continue
		}
		sum := &kept[into]
		for n := range modes {
			sum.v[0].c[n] = sum.v[0].c[n]*sum.amplitude + t.v[0].c[n]*t.amplitude
		}
		sum.v[0].mean = sum.v[0].mean*sum.amplitude + t.v[0].mean*t.amplitude
		sum.v[0].surf = sum.v[0].surf*sum.amplitude + t.v[0].surf*t.amplitude
		sum.amplitude, sum.rebased = 1, true
	}
	w.terms = kept
}

// enter begins the stage from the moment before it. Every vector moves to the modes of the new Biot
// number; the ambient's step is a new even term.
func (w *Walk) enter() {
	for i := range w.n {
		w.bases[i] = w.basisFor(i, clampBiot(w.h*w.scale*w.dirs[i].half/w.k))
	}
	w.terms = append(w.terms[:0], w.before...)
	for i := range w.n {
		if len(w.terms) > 0 && w.bases[i] != w.beforeBases[i] {
			for j := range w.terms {
				w.terms[j].v[i].rebase(&w.cache[w.beforeBases[i]], w.basis(i))
				w.terms[j].rebased = true
			}
		}
	}
	if step := w.beforeAmbient - w.ambient; step != 0 {
		t := term{amplitude: step}
		for i := range w.n {
			t.v[i].even(w.basis(i))
		}
		w.terms = append(w.terms, t)
	}
}

// Kept is a Walk at one moment, to go on from there as often as asked.
// Its modes are named by their numbers, from which they are solved.
type Kept struct {
	dirs          [3]direction
	n, nearest    int
	k, alpha      float64
	h, scale      float64
	ambient       float64
	staged        bool
	terms, before []term
	beforeAmbient float64
	now, then     [3]biot // of bases and beforeBases
}

// biot names modes: the kind of direction and the Biot number.
type biot struct {
	d  int
	bi float64
}

// Keep gives a started Walk as it stands, for GoOn.
func (w *Walk) Keep() *Kept {
	k := &Kept{dirs: w.dirs, n: w.n, nearest: w.nearest, k: w.k, alpha: w.alpha, h: w.h,
		scale: w.scale, ambient: w.ambient, staged: w.staged, terms: slices.Clone(w.terms),
		before: slices.Clone(w.before), beforeAmbient: w.beforeAmbient}
	for i := range w.n {
		b := w.basis(i)
		k.now[i] = biot{b.d, b.bi}
		if len(w.before) > 0 {
			b = &w.cache[w.beforeBases[i]]
			k.then[i] = biot{b.d, b.bi}
		}
	}
	return k
}

// GoOn puts the Walk where a Walk was kept.
func (w *Walk) GoOn(k *Kept) {
	w.dirs, w.n, w.nearest, w.k, w.alpha = k.dirs, k.n, k.nearest, k.k, k.alpha
	w.h, w.scale, w.ambient, w.staged = k.h, k.scale, k.ambient, k.staged
	w.terms = append(w.terms[:0], k.terms...)
	w.before, w.beforeAmbient = append(w.before[:0], k.before...), k.beforeAmbient
	if !k.staged {
		return
	}
	w.bases, w.beforeBases = nowhere, nowhere
	for i := range w.n {
		w.bases[i] = w.place(k.now[i])
		if len(w.before) > 0 {
			w.beforeBases[i] = w.place(k.then[i])
		}
	}
	for i := range w.bases {
		w.bases[i], w.beforeBases[i] = max(0, w.bases[i]), max(0, w.beforeBases[i])
	}
}

// nowhere are places that the cache lacks.
var nowhere = [3]int{-1, -1, -1}

func (w *Walk) basis(i int) *basis { return &w.cache[w.bases[i]] }

// basisFor finds the place of the modes of direction i.
func (w *Walk) basisFor(i int, bi float64) int {
	d := w.dirs[i].d
	if len(w.before) > 0 {
		// Closer Biot numbers count as one; re-basing would divide noise by noise.
		at := w.beforeBases[i]
		if b := &w.cache[at]; b.d == d && math.Abs(b.bi-bi) <= 1e-7*bi && finite(bi) {
			return at
		}
	}
	return w.place(biot{d, bi})
}

// place finds modes in the cache, or solves them into the oldest slot
// that neither this moment nor the one before uses. No slots are alike.
func (w *Walk) place(m biot) int {
	for at := range w.cache {
		if b := &w.cache[at]; b.d == m.d && b.bi == m.bi {
			return at
		}
	}
	for w.used(w.next) {
		w.next = (w.next + 1) % len(w.cache)
	}
	at := w.next
	w.next = (w.next + 1) % len(w.cache)
	if w.Solved != nil {
		w.cache[at] = *w.Solved.basis(m.d, m.bi)
	} else {
		w.cache[at].fill(m.d, m.bi)
	}
	return at
}

func (w *Walk) used(at int) bool {
	for i := range w.bases {
		if w.bases[i] == at || w.beforeBases[i] == at {
			return true
		}
	}
	return false
}

func finite(x float64) bool   { return !math.IsNaN(x) && !math.IsInf(x, 0) }
func positive(x float64) bool { return x > 0 && finite(x) }
