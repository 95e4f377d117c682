// This file holds the three phases of a picture, as the workers run them.

package render

// vertexRun is how many vertices make one piece of work.
const vertexRun = 2048

// listWork shares out the parts to be redone: their triangles to the lanes,
// their vertices in runs.
func (r *Renderer) listWork() {
	r.vertexWork = r.vertexWork[:0]
	r.moving.reset(r.tilesX*r.tilesY, true)
	r.moving.share(r.parts, r.cache.movingParts)
	r.listVertices(r.cache.movingParts)
	if r.cache.full {
		r.still.reset(r.tilesX*r.tilesY, false)
		r.still.share(r.parts, r.cache.stillParts)
		r.listVertices(r.cache.stillParts)
	}
}

func (r *Renderer) listVertices(list []int) {
	for _, i := range list {
		n := len(r.parts[i].Mesh.Positions)
		for lo := 0; lo < n; lo += vertexRun {
			r.vertexWork = append(r.vertexWork, span{i, lo, min(n, lo+vertexRun)})
		}
	}
}

func (r *Renderer) vertexPhase(int) {
	for i := r.pool.take(); i < len(r.vertexWork); i = r.pool.take() {
		w := r.vertexWork[i]
		r.transform(w.part, w.lo, w.hi)
	}
}

func (r *Renderer) setUpPhase(int) {
	sets := [2]*binSet{&r.moving, &r.still}
	n := 2 * laneCount
	if !r.cache.full {
		n = laneCount
	}
	for i := r.pool.take(); i < n; i = r.pool.take() {
		l := &sets[i/laneCount].lanes[i%laneCount]
		for _, w := range l.work {
			r.setUp(l, w.part, w.lo, w.hi)
		}
	}
}

func (r *Renderer) tilePhase(worker int) {
	t := r.tilers[worker]
	for i := r.pool.take(); i < len(r.dirty); i = r.pool.take() {
		t.draw(r.dirty[i])
	}
}
