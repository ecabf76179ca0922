#include "viewer/piece_times.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include "viewer/playback.h"

namespace viewer {

namespace {

// Moments over 0 sort as their bits do, so one number holds a moment and what happens at it.
std::uint64_t keyOf(float moment, std::uint32_t event) {
  return std::uint64_t{std::bit_cast<std::uint32_t>(moment)} << 32 | event;
}

float momentOf(std::uint64_t key) {
  return std::bit_cast<float>(static_cast<std::uint32_t>(key >> 32));
}

std::vector<std::uint64_t> sortedEvents(const Scene& scene) {
  const auto units = static_cast<std::uint32_t>(scene.units.size());
  const auto elements = static_cast<std::uint32_t>(scene.elements.size());
  const auto end = static_cast<float>(scene.stageCount);
  std::vector<std::uint64_t> keys;
  keys.reserve(scene.units.size() + scene.elements.size());
  const auto add = [&](float moment, std::uint32_t event) {
    if (moment > 0 && moment <= end) keys.push_back(keyOf(moment, event));
  };
  for (std::uint32_t i = 0; i < units; ++i) add(scene.units[i].appears, i);
  for (std::uint32_t e = 0; e < elements; ++e) {
    const ElementRange& range = scene.elements[e];
    if (range.indexCount == 0) continue;
    if (range.unitCount == 0) add(range.complete, units + e);
    add(range.goes, units + elements + e);
  }
  std::sort(keys.begin(), keys.end());
  return keys;
}

}  // namespace

PieceTimes::PieceTimes(const Scene& scene)
    : unitCount_(static_cast<std::uint32_t>(scene.units.size())),
      elementCount_(static_cast<std::uint32_t>(scene.elements.size())) {
  const std::vector<std::uint64_t> keys = sortedEvents(scene);
  std::vector<float> moments;
  const auto close = [&](float moment) {
    moments.push_back(moment);
    first_.push_back(static_cast<std::uint32_t>(events_.size()));
  };
  events_.reserve(keys.size());
  moments.reserve(keys.size());
  first_.reserve(keys.size() + 1);
  float stage = 0;  // the next end of a stage that has had no piece
  const auto passStages = [&](float upTo) {
    for (; stage + 1 < upTo; ++stage)
      if (moments.empty() || moments.back() <= stage) close(stage + 1);
  };
  for (const std::uint64_t key : keys) {
    const float moment = momentOf(key);
    passStages(moment);
    if (moments.empty() || moments.back() != moment) close(moment);
    events_.push_back(static_cast<std::uint32_t>(key));
  }
  const auto end = static_cast<float>(scene.stageCount);
  passStages(end);
  if (end > 0 && (moments.empty() || moments.back() < end)) close(end);
  first_.push_back(static_cast<std::uint32_t>(events_.size()));
  moments.shrink_to_fit();
  first_.shrink_to_fit();
  beats_ = Beats(std::move(moments), 1 / Playback::kPiecesPerSecond);
}

std::optional<size_t> PieceTimes::momentAt(double time) const {
  const std::vector<float>& ends = beats_.ends();
  const auto after = std::partition_point(
      ends.begin(), ends.end(), [time](float end) { return static_cast<double>(end) <= time; });
  if (after == ends.begin()) return std::nullopt;
  return static_cast<size_t>(after - ends.begin()) - 1;
}

size_t PieceTimes::countAt(double time) const {
  const auto moment = momentAt(time);
  return moment ? first_[*moment + 1] : 0;
}

size_t PieceTimes::eventCount(size_t moment) const { return first_[moment + 1] - first_[moment]; }

PieceEvent PieceTimes::event(size_t moment, size_t i) const {
  using enum PieceEvent::Kind;
  const std::uint32_t packed = events_[first_[moment] + i];
  if (packed < unitCount_) return {UnitLaid, packed};
  if (packed < unitCount_ + elementCount_) return {ThingMade, packed - unitCount_};
  return {ThingGone, packed - unitCount_ - elementCount_};
}

}  // namespace viewer
