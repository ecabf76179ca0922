// The courses of an outer leaf that stand out past its face: each lies in a layer of its own, as
// thick as the leaf, and is built with the parts of the leaf that it lies in.
#pragma once

#include <list>
#include <string>
#include <vector>

#include "model/works/leaf_parts.h"

namespace model {

class CorbelCourse {
 public:
  // Takes its bricks out of `leaf`, whose layer is `inLine`.
  CorbelCourse(const SettingOut& settingOut, const CorbelPlan& plan, const WallLayer& inLine,
               const Rect& rect, size_t band, LeafParts& leaf, Works& works);

  // What it takes of the leaf's elevation.
  const Rect& rect() const { return rect_; }
  // "corbel 1 course 2", "corbel course 2"
  const std::string& id() const { return id_; }
  const std::string& name() const { return name_; }
  // What it has of rectangles of the leaf's elevation, without others.
  Solid solid(const std::vector<Rect>& rects, const std::vector<Rect>& without) const;
  double thickness() const { return layer_.thickness(); }
  LeafParts& parts() { return parts_; }

 private:
  Rect within(Rect rect) const;

  WallLayer inLine_, layer_;
  Rect rect_;
  std::string id_, name_;
  LeafParts parts_;
};

// All of a leaf, from the lowest up. They keep their places in memory.
std::list<CorbelCourse> corbelCourses(const SettingOut& settingOut, const LeafPlan& plan,
                                      LeafParts& leaf, Works& works);

}  // namespace model
