package values

import "slices"

// Sorted puts things in an order in which each comes after those that it
// takes in, which takes visits. Where they form a circle it gives that
// circle; the visit that closes it is the first that is false.
func Sorted[T comparable](list []T, takes func(T, func(T) bool)) (order, circle []T) {
	done := map[T]bool{}
	var path []T
	var visit func(T) bool
	visit = func(x T) bool {
		switch i := slices.Index(path, x); {
		case done[x] || circle != nil:
			return circle == nil
		case i >= 0:
			circle = slices.Clone(path[i:])
			return false
		}
		path = append(path, x)
		takes(x, visit)
		path = path[:len(path)-1]
		done[x] = true
		order = append(order, x)
		return circle == nil
	}
	for _, x := range list {
		visit(x)
	}
	return order, circle
}
