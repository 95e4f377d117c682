// Package interval fits a linear law to readings that are intervals, not
// numbers: "3 goes, 4 does not".
//
//	          least            most
//	            |---- x.b + e ----|          e ~ Normal(0, sigma scale)
//	-----------(======================)----------------->  thickness
//	           goes            does not go
//
// Row i says that x_i.b plus a feel error of standard deviation sigma scale_i
// lies between least_i and most_i. Either limit may be infinite; equal limits
// are an ordinary measured number. With the errors independent, the log
// likelihood is
//
//	l(b) = sum log( Phi((most_i - x_i.b)/s_i) - Phi((least_i - x_i.b)/s_i) ),
//
// phi/s_i in place of the difference where the limits are equal. It is concave
// in b, so Newton's method finds the one optimum; the inverse of minus its
// Hessian there is the covariance. A Gaussian belief about an unknown enters as
// a row with equal limits.
//
// Sigma is given, or found along with b. The likelihood is then concave in
// b/sigma and 1/sigma (Burridge, J. R. Statist. Soc. B 43, 1981), so there is
// still one optimum and no start too far from it. A free sigma stays above a
// floor: numbers that one law meets perfectly would drive it to nought and the
// likelihood without bound, and intervals with room to spare leave it no
// information either. The scales are of sigma, so a belief's width grows and
// falls with a free one.
//
// The derivatives of a row are moments of a normal deviate between two limits
// (Tobin, Econometrica 26, 1958, for one-sided rows; the general case by
// parts). They keep ten digits and more for intervals of any width, however far
// off.
//
// What it leaves out: errors that go together, and laws that are not linear;
// a caller with one of the latter lays its rows out anew and fits again.
package interval
