#include "viewer/overlays/label_layout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

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
Box boxBeside(const LabelRequest& request, const glm::vec2& side, float away) {
  const glm::vec2 half = request.size * 0.5f;
  const glm::vec2 square = side / std::max(std::abs(side.x), std::abs(side.y));
  return Box::at(request.anchor + side * away + square * half - half, request.size);
}

bool tryPlace(const LabelRequest& request, const LabelRules& rules, const TakenBoxes& taken,
              PlacedLabel& out) {
  const auto fits = [&](const Box& box) {
    return box.inside(rules.sheet) && taken.free(box.grown(rules.gap));
  };
  const float length = std::hypot(request.towards.x, request.towards.y);
  if (length < 1e-6f) {
    const Box over = Box::at(request.anchor - request.size * 0.5f, request.size);
    if (fits(over)) {
      out = {true, over, false};
      return true;
    }
  }
  const glm::vec2 side = length < 1e-6f ? glm::vec2(0, -1) : request.towards / length;
  const float step = std::max(14.0f, request.size.y * 0.8f);
  for (float away = rules.near; away <= rules.reach; away += step)
    for (int turn = 0; turn < kTurns; ++turn) {
      const Box box = boxBeside(request, turned(side, turn), away);
      if (!fits(box)) continue;
      out = {true, box, away > rules.near};
      return true;
    }
  return false;
}

}  // namespace

std::vector<PlacedLabel> layOutLabels(const std::vector<LabelRequest>& requests,
                                      const LabelRules& rules) {
  std::vector<PlacedLabel> placed(requests.size());
  std::vector<size_t> order(requests.size());
  std::iota(order.begin(), order.end(), size_t(0));
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return requests[a].priority > requests[b].priority; });
  TakenBoxes taken(rules.sheet);
  for (const Box& box : rules.taken) taken.add(box);
  for (const size_t i : order) {
    const LabelRequest& request = requests[i];
    if (!rules.sheet.contains(request.anchor)) continue;
    if (tryPlace(request, rules, taken, placed[i])) taken.add(placed[i].box);
  }
  return placed;
}

glm::vec2 leaderStart(const Box& label, const glm::vec2& anchor) {
  return {std::clamp(anchor.x, label.left, label.right),
          std::clamp(anchor.y, label.top, label.bottom)};
}

}  // namespace viewer
