// When each piece comes or goes: what playing and stepping by piece go by. No OpenGL.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "viewer/beats.h"
#include "viewer/scene.h"

namespace viewer {

// A brick or block of a leaf that is laid unit by unit, or a whole thing of any other kind.
struct PieceEvent {
  enum class Kind { UnitLaid, ThingMade, ThingGone };
  Kind kind = Kind::UnitLaid;
  std::uint32_t index = 0;  // into Scene::units or Scene::elements
};

// Of one scene: 12 bytes a piece. Nothing of the scene is kept.
class PieceTimes {
 public:
  // A piece's moment is that from which all of it is there, or gone. Pieces of one moment come
  // together. A stage without a piece counts as one, and the end of the programme, so that nothing
  // is passed over. Sorts: n log n.
  explicit PieceTimes(const Scene& scene);

  // A beat for each moment, of 1 / Playback::kPiecesPerSecond.
  const Beats& beats() const { return beats_; }
  // Pieces, and how many of them have had their moment.
  size_t count() const { return events_.size(); }
  size_t countAt(double time) const;
  // What the last moment at or before a time has brought; the moment by its number.
  std::optional<size_t> momentAt(double time) const;
  size_t momentCount() const { return beats_.size(); }
  size_t eventCount(size_t moment) const;
  PieceEvent event(size_t moment, size_t i) const;

 private:
  std::uint32_t unitCount_ = 0, elementCount_ = 0;
  Beats beats_;
  std::vector<std::uint32_t> events_;  // units, then elements made, then elements gone
  std::vector<std::uint32_t> first_;   // of each moment, and the end
};

}  // namespace viewer
