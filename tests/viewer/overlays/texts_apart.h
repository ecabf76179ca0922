// Whether the texts of a sheet stand apart, on the sheet, and large enough to be read.
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "viewer/overlays/pen.h"

namespace viewer {

inline void expectApart(const std::vector<DrawnText>& all, const Box& sheet,
                        const std::string& where) {
  for (size_t i = 0; i < all.size(); ++i) {
    const Box& box = all[i].box;
    if (!box.inside(sheet)) ADD_FAILURE() << all[i].text << " is off the sheet: " << where;
    if (box.height() < 10.4f) ADD_FAILURE() << all[i].text << " is too small: " << where;
    for (size_t j = i + 1; j < all.size(); ++j)
      if (box.grown(-0.5f).overlaps(all[j].box.grown(-0.5f)))
        ADD_FAILURE() << all[i].text << " runs into " << all[j].text << ": " << where;
  }
}

}  // namespace viewer
