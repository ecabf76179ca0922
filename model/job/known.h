// What of a job file could be read, so that a check leaves alone what it does not know and nothing
// else: one slip is one message, and every other slip still has its own.
#pragma once

#include <initializer_list>
#include <set>
#include <string>

#include "model/job/job.h"

namespace model {

// What could not be read, by path as the file spells it: a key ("walls.cavity",
// "opening[2].width"), or a whole part ("roof", "opening[2]"). In the Job a default stands in.
using BrokenParts = std::set<std::string>;

class Known {
 public:
  Known(const Job& job, const BrokenParts& broken) : job_(job), broken_(broken) {}

  // The key or part was read, and every part that it lies in.
  bool has(std::string path) const;
  bool has(std::initializer_list<const char*> paths) const;
  // And everything inside it.
  bool hasAllOf(const std::string& part) const;
  // `key` of every item: "storey", "floor".
  bool hasOfEach(const std::string& list, size_t count, const std::string& key) const;

  // What LevelFacts and the plan's facts are worked out from.
  bool wallThickness() const;
  bool courses() const;
  bool groundFloor() const;  // its finished level
  bool storeyFloor(size_t storey) const;
  bool lastFloor() const;
  bool slabUnderside() const;
  bool dampCourse() const;
  bool wallTop() const;
  bool eavesUnderside() const;
  bool outerLeafTop() const;
  bool groundAtPlan() const;
  bool roofEdges() const;        // which walls are gables
  bool foundationSteps() const;  // walls and levels
  bool lowestConcrete() const;   // as far as the file gives it

 private:
  const Job& job_;
  const BrokenParts& broken_;
};

}  // namespace model
