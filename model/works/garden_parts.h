// What a garden wall is made of, part by part; see garden_walls.cpp.
#pragma once

#include <string>
#include <vector>

#include "model/works/element.h"
#include "model/works/garden_plan.h"

namespace model {

// One wall that is being built.
struct GardenSite {
  GardenPlan plan;
  std::string id, name;
  double brickHeight = 0;
  int perDay = 1;    // courses
  int mostDays = 1;  // of all garden walls: they rise day by day together

  // Of the stage: what has gone by when so many courses stand.
  double timeOf(int course) const;
  // "garden wall 1/length 2/day 1"; `part` may be empty.
  std::string idOf(const std::string& part, const std::string& what) const;
  std::string nameOf(const std::string& part, const std::string& what) const;
  // "length 2", or nothing where there is one only.
  std::string lengthPart(size_t length) const;
  // Courses [first, last) of brickwork, without solid and units.
  Element brickwork(const std::string& part, const std::string& what, int first, int last) const;
  // The bricks of course `course` of an element that has courses [first, last).
  void addUnits(const std::vector<SolidPiece>& pieces, int course, int first, int last,
                std::vector<MasonryUnit>& units) const;
  // Adds an element with its bricks.
  static void finish(Element e, const UnitFrame& frame, const std::vector<MasonryUnit>& units,
                     Works& works);
};

// The sheet in the bed joint of one course, right through wall and piers.
void buildGardenDampCourse(const GardenSite& site, Works& works);
// The courses at the top that stand out.
void buildGardenCorbels(const GardenSite& site, Works& works);
// The stones over the last course, and the caps of piers.
void buildGardenCoping(const GardenSite& site, Works& works);

}  // namespace model
