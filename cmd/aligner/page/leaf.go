package page

// This file leafs through what is scrolled, by keys.

import "fyne.io/fyne/v2/container"

// leafShare is how much of what is seen one leaf moves on: a line or two stay in sight.
const leafShare = 0.6

// Leaf moves so many leaves down.
func Leaf(s *container.Scroll, leaves float32) {
	to := s.Offset
	most := max(s.Content.MinSize().Height-s.Size().Height, 0)
	to.Y = min(max(to.Y+leaves*leafShare*s.Size().Height, 0), most)
	s.ScrollToOffset(to)
}
