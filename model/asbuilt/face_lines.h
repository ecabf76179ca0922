// Whether walls as built are straight and parallel.
#pragma once

#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"

namespace model {

// One face of one wall, from two readings or more.
struct FaceAsBuilt {
  size_t wall = 0;
  std::string target;    // "outer-face"
  double skew = 0;       // further out (+) at the last reading than at the first, metres
  double bow = 0;        // most out (+) or in of the straight line between those two
  double bowAt = 0;      // metres from the wall's start
  std::string words;     // "outer face of B-C: 3 further out at C, bulges 7 out at 3000 from B"
  bool changes = false;  // more than is allowed of the face
};

// The clear width between the inner faces of two facing walls, against the drawing.
struct SpanAsBuilt {
  size_t wall = 0, facing = 0;
  double least = 0, most = 0;  // wider (+) or narrower, wherever both were read
  std::string words;           // "A-B to C-D: 4 to 9 wider inside; ..."
  bool changes = false;  // 5 or more (common practice, no source: plaster and hangers take it)
};

std::vector<FaceAsBuilt> deriveFaceLines(const Job& job, const SettingOut& settingOut,
                                         const std::vector<Deviation>& deviations);
std::vector<SpanAsBuilt> deriveSpans(const SettingOut& settingOut,
                                     const std::vector<Deviation>& deviations);

}  // namespace model
