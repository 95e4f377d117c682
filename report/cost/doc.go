// Package cost says what it costs to leave a boat as she stands: bolted up out of line,
// or with a crooked half, what bearing, seal, bolts and shaft then carry, in plain
// graded words with the number behind each and how sure it is.
//
//	turn.Play --> moment, stress, loads that stand still, loads that turn
//	               |
//	               +-- against yield and a cautious fatigue figure --> shaft
//	               +-- against what the bearing carries anyway ------> bearings, shake
//	               +-- against the bolts' clamping ------------------> bolts
//	               +-- where it points, against lined up -------------> carries
//	               +-- the mounts' loads, against lined up -----------> mounts, rocking
//	hull ---- clear spans against two rules of spacing ---------------> spacing
//	shaftline whirling --> against the shaft's greatest speed -------> whirling
//
// Grades are Nothing, Little, Wears and Harms. Where each begins is our own judgement
// but for yield (see package hulls for its sources); the fatigue figure is of low
// confidence and is said to be. What is unlikely is said to be unlikely: nobody is to
// be frightened into paying.
//
// It leaves out thrust, the propeller's unbalance, corrosion, and soft couplings,
// through which the shaft is not bolted.
package cost
