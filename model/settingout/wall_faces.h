// The lines to which walls and foundations are built: every face of every leaf, and both edges of
// the concrete under them.
#pragma once

#include <string>
#include <vector>

#include "model/vec.h"

namespace model {

// How far each lies inward from the outer face of the finished masonry, in metres; negative is
// outside it. The same for every wall, since one build-up goes all round.
struct FaceDistances {
  double finishedFace = 0;  // of the render, where there is any; else the outer face
  double outerFace = 0;
  double outerLeafBack = 0;   // the cavity's outer side
  double innerLeafFront = 0;  // the cavity's inner side
  double innerFace = 0;       // of the whole wall
  // Of the concrete, which is centred under the wall; about equal to the faces when it is as wide.
  double foundationOuter = 0;
  double foundationInner = 0;

  // What is dug or built reaches from `outermost` to `innermost`.
  double outermost() const { return foundationOuter < outerFace ? foundationOuter : outerFace; }
  double innermost() const { return foundationInner > innerFace ? foundationInner : innerFace; }
};

// One of those lines along one wall, between the points where it meets the same line of the walls
// before and after. Both points lie on the bisectors of the corners, in the wall's own direction.
struct FaceLine {
  std::string name;  // as a string line is called: "outer face", "foundation inner edge"
  double inward = 0;
  Vec2 start{0, 0}, end{0, 0};
};

struct WallFaces {
  FaceLine outerFace, outerLeafBack, innerLeafFront, innerFace, foundationOuter, foundationInner;
};

}  // namespace model
