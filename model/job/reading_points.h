// Where on the building a reading was taken, from the words in its file.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/job/reading_targets.h"

namespace model {

// The plan's names and lengths, as far as readings need them.
class ReadingPoints {
 public:
  explicit ReadingPoints(const Job& job);

  size_t corners() const { return letters_.size(); }
  const std::vector<std::string>& letters() const { return letters_; }
  const std::vector<std::string>& walls() const { return walls_; }
  const std::vector<std::string>& openings() const { return openings_; }

  std::optional<size_t> corner(const std::string& name) const;
  std::optional<size_t> wall(const std::string& name) const;  // either way round
  bool opening(const std::string& name) const;
  // Two different corners, "A-C".
  std::optional<std::pair<size_t, size_t>> twoCorners(const std::string& name) const;
  bool neighbours(const std::pair<size_t, size_t>& corners) const;
  // True when the wall is named from its other end: "B-A".
  bool backwards(size_t wall, const std::string& name) const { return walls_[wall] != name; }

  double wallLength(size_t wall) const;
  double distance(const std::pair<size_t, size_t>& corners) const;  // on the outline
  const Vec2& cornerAt(size_t corner) const { return job_.outline[corner]; }

 private:
  const Job& job_;
  std::vector<std::string> letters_, walls_, openings_;
};

// A level pin as a reading names it: "pin 3" in a trench, "pin B3" over the ground slab, "pin K-B3"
// over the cellar's.
struct PinWord {
  std::string name;   // "3", "B3", "K-B3"
  TargetPlace place;  // Pins, SlabPins or CellarPins
};
// Nothing for any other word. Whether the job has that pin is not known here.
std::optional<PinWord> pinOf(const std::string& at);

}  // namespace model
