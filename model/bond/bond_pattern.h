// Where the cross joints of each bond come, counted in quarter bricks with their joints.
//
// A stretcher is four of them, a three-quarter three, a header two, a closer one. Courses turn a
// corner by turns: in one a wall's own brick makes it ("through"), in the next it butts against the
// other wall's, whose end is the first header then.
#pragma once

#include <cstddef>
#include <vector>

#include "model/job/masonry.h"

namespace model {

inline constexpr int kStretcher = 4, kThreeQuarter = 3, kHeader = 2, kCloser = 1;

// After so many courses the bond is the same again; always even.
size_t coursesOf(BondKind bond);

// Is a course, of those, laid of headers only?
bool isHeaderCourse(BondKind bond, size_t course, bool through);

// Does the bond have headers among its faces in that course at all?
bool hasHeaders(BondKind bond, size_t course);

// Joints of a course from its end on, in ascending order, up to but without `upTo`. The one between
// a butting wall and the header of the other is among them, at 2.
std::vector<int> patternJoints(BondKind bond, size_t course, bool through, int upTo);

}  // namespace model
