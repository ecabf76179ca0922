#include "viewer/overlays/tape_layout.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace viewer {
namespace {

constexpr double kEqualShare = 0.45;  // of the tape that is dealt out evenly

// The two rows of names.
struct Rows {
  float first = 0, height = 0, step = 0, pad = 0;
  float y(int row) const { return first + float(row) * step; }
};

void layOutGraduations(const std::vector<TapeStage>& stages, TapeLayout& out, float unit) {
  const size_t n = stages.size();
  double total = 0;
  for (const TapeStage& s : stages) total += s.days + s.waitDays;
  const double width = out.tape.width();
  double x = out.tape.left;
  for (const TapeStage& s : stages) {
    const double days = s.days + s.waitDays;
    const double byDays = total > 0 ? days / total : 1.0 / double(n);
    const double span = width * (kEqualShare / double(n) + (1 - kEqualShare) * byDays);
    const double perDay = days > 0 ? span / days : span;
    out.edges.push_back(float(x));
    out.waitFrom.push_back(float(x + (days > 0 ? span * s.days / days : span)));
    // A tape whose short graduations run together is no use: leave them out where they would.
    if (perDay >= 4.0 * unit)
      for (double day = 1; day < days - 0.01; ++day) out.days.push_back(float(x + day * perDay));
    x += span;
  }
  out.edges.push_back(out.tape.right);
}

std::string shortenedTo(const std::string& text, float width, const MeasureText& measure) {
  if (measure(text).x <= width) return text;
  std::string best;
  // At whole words, and only while most of it is left: "Run in the..." says nothing.
  for (size_t space = text.find(' '); space != std::string::npos;
       space = text.find(' ', space + 1)) {
    std::string part = text.substr(0, space);
    while (!part.empty() && part.back() == ',') part.pop_back();
    if (part.size() * 10 >= text.size() * 6 && measure(part + "...").x <= width)
      best = part + "...";
  }
  return best;
}

// As many of its letters as fit.
std::string cutTo(std::string text, float width, const MeasureText& measure) {
  if (measure(text).x <= width) return text;
  while (!text.empty()) {
    // One whole character of UTF-8: its following bytes, then its first.
    while (text.size() > 1 && (static_cast<unsigned char>(text.back()) & 0xC0) == 0x80)
      text.pop_back();
    text.pop_back();
    while (!text.empty() && (text.back() == ' ' || text.back() == ',')) text.pop_back();
    if (measure(text + "...").x <= width) return text.empty() ? text : text + "...";
  }
  return text;
}

// The stage that is under way over those before and after it: a lower row that is parted where the
// current stage stands, or as near to that as lets both be read.
void layOutThree(const std::vector<TapeStage>& stages, size_t current, const MeasureText& measure,
                 const Rows& rows, TapeLayout& out) {
  const float left = out.tape.left + rows.pad, right = out.tape.right - rows.pad;
  const auto put = [&](size_t stage, float x, float width, int row) {
    const std::string text = cutTo(stages[stage].name, width, measure);
    if (!text.empty())
      out.names.push_back({stage, text, Box::at({x, rows.y(row)}, {measure(text).x, rows.height})});
  };
  const float width = std::min(measure(stages[current].name).x, right - left);
  const float x = std::min(out.edges[current] + rows.pad, right - width);
  put(current, x, right - x, 0);
  const bool before = current > 0, after = current + 1 < stages.size();
  float wideBefore = before ? measure(stages[current - 1].name).x : 0;
  float wideAfter = after ? measure(stages[current + 1].name).x : 0;
  const float room = right - left - (before && after ? 2 * rows.pad : 0);
  if (wideBefore + wideAfter > room) {
    const float half = room / 2;
    if (wideBefore < half)
      wideAfter = room - wideBefore;
    else if (wideAfter < half)
      wideBefore = room - wideAfter;
    else
      wideBefore = wideAfter = half;
  }
  const float gap = before && after ? 2 * rows.pad : 0;
  const float cut = std::clamp(out.edges[current] - rows.pad, left + wideBefore,
                               std::max(left + wideBefore, right - wideAfter - gap));
  if (before) put(current - 1, cut - wideBefore, wideBefore, 1);
  if (!after) return;
  const float own = out.edges[current + 1] + rows.pad;
  put(current + 1, std::clamp(own, cut + gap, std::max(cut + gap, right - wideAfter)), wideAfter,
      1);
}

void layOutNames(const std::vector<TapeStage>& stages, size_t current, const MeasureText& measure,
                 float unit, TapeLayout& out) {
  const float lineHeight = measure("Xg").y;
  const float pad = 5 * unit;
  const Rows rows{out.tape.bottom - 2 * lineHeight - 4 * unit, lineHeight, lineHeight + unit, pad};
  if (current < stages.size()) layOutThree(stages, current, measure, rows, out);
  std::vector<size_t> order(stages.size());
  std::iota(order.begin(), order.end(), size_t(0));
  std::erase_if(order, [&](size_t i) { return i + 1 >= current && i <= current + 1; });
  std::stable_sort(order.begin(), order.end(), [&](size_t a, size_t b) {
    return out.edges[a + 1] - out.edges[a] > out.edges[b + 1] - out.edges[b];
  });
  for (const size_t i : order) {
    const float x = out.edges[i] + pad;
    TapeName best;
    float bestWidth = 0;
    for (int row = 0; row < 2; ++row) {
      const float y = rows.y(row);
      float stop = out.tape.right - pad;
      bool blocked = y < out.tape.top || x >= stop;
      for (const TapeName& other : out.names) {
        const bool sameRow = std::abs(other.box.top - y) < lineHeight * 0.5f;
        if (sameRow && other.box.left <= x && other.box.right + 2 * pad > x) blocked = true;
        if (sameRow && other.box.left > x) stop = std::min(stop, other.box.left - 2 * pad);
      }
      if (blocked) continue;
      const std::string text = shortenedTo(stages[i].name, stop - x, measure);
      const glm::vec2 size = measure(text);
      if (text.empty() || size.x <= bestWidth) continue;
      bestWidth = size.x;
      best = {i, text, Box::at({x, y}, {size.x, lineHeight})};
    }
    if (bestWidth > 0) out.names.push_back(best);
  }
}

}  // namespace

float TapeLayout::xAt(double time) const {
  if (edges.size() < 2) return tape.left;
  const double t = std::clamp(time, 0.0, double(edges.size() - 1));
  const size_t i = std::min(size_t(t), edges.size() - 2);
  return edges[i] + (edges[i + 1] - edges[i]) * float(t - double(i));
}

double TapeLayout::timeAt(float x) const {
  if (edges.size() < 2) return 0;
  if (x <= edges.front()) return 0;
  if (x >= edges.back()) return double(edges.size() - 1);
  const auto next = std::upper_bound(edges.begin(), edges.end(), x);
  const size_t i = size_t(next - edges.begin()) - 1;
  return double(i) + double((x - edges[i]) / (edges[i + 1] - edges[i]));
}

std::optional<size_t> TapeLayout::stageAt(float x) const {
  if (edges.size() < 2 || x < edges.front() || x >= edges.back()) return std::nullopt;
  return std::min(size_t(timeAt(x)), edges.size() - 2);
}

TapeLayout layOutTape(const std::vector<TapeStage>& stages, const Box& tape, size_t current,
                      const MeasureText& measure, float unit) {
  TapeLayout out;
  out.tape = tape;
  if (stages.empty()) {
    out.edges = {tape.left};
    return out;
  }
  layOutGraduations(stages, out, unit);
  layOutNames(stages, current, measure, unit, out);
  return out;
}

}  // namespace viewer
