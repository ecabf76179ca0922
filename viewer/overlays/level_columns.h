// The texts of the levels, line by line in their columns. Pure arithmetic, no drawing.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "viewer/overlays/sheet_layout.h"

namespace viewer {

struct LevelItem {
  std::string value;               // "+2.458"
  std::vector<std::string> names;  // all that lie at this height
  std::string where;               // "Hall window, Study window", when there is one name
  std::string course;              // "28", "-13", "32.8"
  bool opening = false;            // sill or head: first to go into the left column
  float yRight = 0, yLeft = 0;     // where it lies on the sheet, at the drawing's two sides
  std::string lift = {};           // that ends here too; said where there is room after the rest
};

struct LevelLine {
  size_t item = 0;
  bool left = false;   // in which column
  Box box;             // of the text
  float trueY = 0;     // of what it speaks of
  std::string name;    // what fits of the names; may have to be written a little smaller
  float room = 0;      // width for the name
  bool course = true;  // false where there is no room for it
};

// Width of a text at the plan's size.
using MeasureLevel = std::function<float(const std::string&, bool bold)>;

// Where columns begin inside a line, pixels from its left; `mark` is room kept for the mark.
struct LevelColumnWidths {
  float mark = 0, value = 0, course = 0, gap = 0;
};
LevelColumnWidths levelColumnWidths(const std::vector<LevelItem>& items, const SheetLayout& layout,
                                    float mark, const MeasureLevel& measure);

// One line for each item, whatever there is room for: `items` are highest first. Lines of one
// column stand in the order of their heights, as near to them as keeps them apart. The plan must be
// for as many items.
std::vector<LevelLine> layOutLevels(const std::vector<LevelItem>& items, const SheetLayout& layout,
                                    const LevelColumnWidths& widths, const MeasureLevel& measure);

// The names in the fullest form that is no wider than `width`; perhaps cut short.
std::string levelNames(const std::vector<std::string>& names, float width,
                       const MeasureLevel& measure);
// A name with as many of the places where it is so as fit: "sill, Hall window + 2 more".
std::string levelNameWhere(const std::string& name, const std::string& where, float width,
                           const MeasureLevel& measure);

}  // namespace viewer
