#include "viewer/overlays/label_layout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

// Boxes filed by the squares of a coarse grid they touch, so that a test looks at a few only.
class TakenBoxes {
 public:
  explicit TakenBoxes(const Box& sheet) : sheet_(sheet) {
    columns_ = std::max(1, int(std::ceil(sheet.width() / kSquare)));
    rows_ = std::max(1, int(std::ceil(sheet.height() / kSquare)));
    squares_.resize(size_t(columns_) * size_t(rows_));
  }
  void add(const Box& box) {
    boxes_.push_back(box);
    visit(box, [&](std::vector<std::uint32_t>& square) {
      square.push_back(std::uint32_t(boxes_.size() - 1));
      return true;
    });
  }
  bool free(const Box& box) const {
    return const_cast<TakenBoxes*>(this)->visit(box, [&](std::vector<std::uint32_t>& square) {
      return std::none_of(square.begin(), square.end(),
                          [&](std::uint32_t i) { return boxes_[i].overlaps(box); });
    });
  }

 private:
  static constexpr float kSquare = 96;

  template <typename Visitor>
  bool visit(const Box& box, Visitor visitor) {
    const int c0 = column(box.left), c1 = column(box.right);
    const int r0 = row(box.top), r1 = row(box.bottom);
    for (int r = r0; r <= r1; ++r)
      for (int c = c0; c <= c1; ++c)
        if (!visitor(squares_[size_t(r) * size_t(columns_) + size_t(c)])) return false;
    return true;
  }
  int column(float x) const {
    return std::clamp(int((x - sheet_.left) / kSquare), 0, columns_ - 1);
  }
  int row(float y) const { return std::clamp(int((y - sheet_.top) / kSquare), 0, rows_ - 1); }

  Box sheet_;
  int columns_ = 1, rows_ = 1;
  std::vector<Box> boxes_;
  std::vector<std::vector<std::uint32_t>> squares_;
};

// Turns that are tried on each ring, the wished-for side first, then ever further from it.
constexpr int kTurns = 12;

glm::vec2 turned(const glm::vec2& side, int turn) {
  const int half = (turn + 1) / 2;
  const float angle = float(turn % 2 ? half : -half) * 2 * 3.14159265f / kTurns;
  const float c = std::cos(angle), s = std::sin(angle);
  return {side.x * c - side.y * s, side.x * s + side.y * c};
}

// The box that stands beside the anchor, no further from it than `away`.
Box boxBeside(const LabelPlace& place, const glm::vec2& size, const glm::vec2& side, float away) {
  const glm::vec2 half = size * 0.5f;
  const glm::vec2 square = side / std::max(std::abs(side.x), std::abs(side.y));
  return Box::at(place.anchor + side * away + square * half - half, size);
}

// The same, and wholly beyond the line through the anchor that is square to the side.
Box boxBeyond(const LabelPlace& place, const glm::vec2& size, const glm::vec2& side, float away) {
  const glm::vec2 half = size * 0.5f;
  const float out = away + std::abs(side.x) * half.x + std::abs(side.y) * half.y;
  return Box::at(place.anchor + side * out - half, size);
}

// What is kept clear of, from what never gives way to what does first.
struct Taken {
  TakenBoxes firm, lines, avoid;
};

enum class Clear { OfAll, OfFirmAndLines, OfFirm };

class Placing {
 public:
  Placing(const LabelRequest& request, const LabelRules& rules, const Taken& taken)
      : request_(request), rules_(rules), taken_(taken) {
    places_.push_back({request.anchor, request.towards});
    places_.insert(places_.end(), request.others.begin(), request.others.end());
  }

  PlacedLabel place() {
    const float sheet = rules_.sheet.width() + rules_.sheet.height();
    if (!request_.must) {
      for (const Clear clear : {Clear::OfAll, Clear::OfFirmAndLines})
        if (beside(clear) || around(clear, rules_.reach)) break;
      return found_;
    }
    for (const Clear clear : {Clear::OfAll, Clear::OfFirmAndLines})
      if (beside(clear)) return found_;
    for (const Clear clear : {Clear::OfAll, Clear::OfFirmAndLines})
      if (around(clear, rules_.reach)) return found_;
    for (const Clear clear : {Clear::OfFirmAndLines, Clear::OfFirm})
      if (around(clear, sheet)) return found_;
    return found_;
  }

 private:
  bool fits(const Box& box, Clear clear, const LabelPlace& by) {
    const Box wide = box.grown(rules_.gap);
    if (!box.inside(rules_.sheet) || !taken_.firm.free(wide)) return false;
    if (clear != Clear::OfFirm && !taken_.lines.free(wide)) return false;
    if (clear == Clear::OfAll && !taken_.avoid.free(wide)) return false;
    found_ = {true, box, false, by.anchor};
    return true;
  }
  bool usable(const LabelPlace& by) const {
    return rules_.sheet.contains(by.anchor) &&
           std::none_of(rules_.over.begin(), rules_.over.end(),
                        [&](const Box& box) { return box.contains(by.anchor); });
  }
  static bool over(const LabelPlace& by) { return std::hypot(by.towards.x, by.towards.y) < 1e-6f; }

  // At one of its places, needing no leader.
  bool beside(Clear clear) {
    for (const LabelPlace& by : places_) {
      if (!usable(by)) continue;
      if (over(by)) {
        if (fits(Box::at(by.anchor - request_.size * 0.5f, request_.size), clear, by)) return true;
        continue;
      }
      const auto boxAt = request_.besideLine ? boxBeyond : boxBeside;
      if (fits(boxAt(by, request_.size, glm::normalize(by.towards), rules_.near), clear, by))
        return true;
    }
    return false;
  }

  // On rings round the places, the nearest first.
  bool around(Clear clear, float reach) {
    const float step = std::max(14.0f, request_.size.y * 0.8f);
    for (float away = rules_.near; away <= reach; away += step)
      for (const LabelPlace& by : places_) {
        if (!usable(by)) continue;
        const glm::vec2 side = over(by) ? glm::vec2(0, -1) : glm::normalize(by.towards);
        for (int turn = 0; turn < kTurns; ++turn) {
          if (!fits(boxBeside(by, request_.size, turned(side, turn), away), clear, by)) continue;
          found_.leader = away > rules_.near;
          return true;
        }
      }
    return false;
  }

  const LabelRequest& request_;
  const LabelRules& rules_;
  const Taken& taken_;
  std::vector<LabelPlace> places_;
  PlacedLabel found_;
};

}  // namespace

std::vector<PlacedLabel> layOutLabels(const std::vector<LabelRequest>& requests,
                                      const LabelRules& rules) {
  std::vector<PlacedLabel> placed(requests.size());
  std::vector<size_t> order(requests.size());
  std::iota(order.begin(), order.end(), size_t(0));
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return requests[a].priority > requests[b].priority; });
  Taken taken{TakenBoxes(rules.sheet), TakenBoxes(rules.sheet), TakenBoxes(rules.sheet)};
  for (const Box& box : rules.taken) taken.firm.add(box);
  for (const Box& box : rules.lines) taken.lines.add(box);
  for (const Box& box : rules.avoid) taken.avoid.add(box);
  for (const size_t i : order) {
    placed[i] = Placing(requests[i], rules, taken).place();
    if (placed[i].shown) taken.firm.add(placed[i].box);
  }
  return placed;
}

glm::vec2 leaderStart(const Box& label, const glm::vec2& anchor) {
  return {std::clamp(anchor.x, label.left, label.right),
          std::clamp(anchor.y, label.top, label.bottom)};
}

}  // namespace viewer
