// What is taken on a sheet already, so that no word covers another.
#pragma once

#include <optional>
#include <vector>

#include "model/drawing/sheet.h"

namespace model {

class ClearSpace {
 public:
  explicit ClearSpace(const Area& area) : area_(area) {}

  // A convex figure that nothing else may cover: a text, a board.
  void take(const Polygon& figure);
  // A line that texts rather keep off, though they can cross it.
  void takeLine(const Vec2& a, const Vec2& b);
  void takeLines(const Polygon& closed);

  // True when the convex figure lies in the area and on nothing that is taken.
  bool isFree(const Polygon& figure) const;
  // The same of a line.
  bool isFree(const Vec2& a, const Vec2& b) const;
  // How many lines the figure lies on.
  int linesUnder(const Polygon& figure) const;

  // Of texts in the order of liking, the first that is free and crosses the fewest lines, and no
  // more than `most`; what it covers is taken then. Nothing when there is none.
  std::optional<Text> place(const std::vector<Text>& candidates, const TextWidth& widthOf,
                            int most = 1000);

 private:
  Area area_;
  std::vector<Polygon> taken_, lines_;
};

}  // namespace model
