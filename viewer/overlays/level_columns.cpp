#include "viewer/overlays/level_columns.h"

#include <algorithm>

#include "viewer/overlays/stack_apart.h"

namespace viewer {
namespace {

// `some` of `from`, evenly spread.
std::vector<size_t> evenly(const std::vector<size_t>& from, size_t some) {
  std::vector<size_t> picked;
  for (size_t i = 0; i < some; ++i) picked.push_back(from[(2 * i + 1) * from.size() / (2 * some)]);
  return picked;
}

// Which items go into the left column: openings first.
std::vector<bool> leftOnes(const std::vector<LevelItem>& items, size_t count) {
  std::vector<size_t> openings, others, picked;
  for (size_t i = 0; i < items.size(); ++i) (items[i].opening ? openings : others).push_back(i);
  picked = count <= openings.size() ? evenly(openings, count) : openings;
  if (count > openings.size()) {
    const auto more = evenly(others, std::min(count - openings.size(), others.size()));
    picked.insert(picked.end(), more.begin(), more.end());
  }
  std::vector<bool> left(items.size(), false);
  for (const size_t i : picked) left[i] = true;
  return left;
}

std::string joined(const std::vector<std::string>& names, size_t count) {
  std::string text;
  for (size_t i = 0; i < count; ++i) text += (i ? " / " : "") + names[i];
  if (count < names.size()) text += " + " + std::to_string(names.size() - count) + " more";
  return text;
}

// As much of it as fits with three dots; nothing when that is not worth reading.
std::string cutShort(std::string text, float width, const MeasureLevel& measure) {
  while (!text.empty()) {
    // One whole character of UTF-8: its following bytes, then its first.
    while (text.size() > 1 && (static_cast<unsigned char>(text.back()) & 0xC0) == 0x80)
      text.pop_back();
    text.pop_back();
    while (!text.empty() && (text.back() == ' ' || text.back() == ',')) text.pop_back();
    if (text.size() < 3) return {};
    if (measure(text + "...", false) <= width) return text + "...";
  }
  return {};
}

// How much smaller a line of names may be written, of the column's text.
float smallerNames(float text) {
  constexpr float kLeast = 0.88f, kLeastPixels = 10.5f;
  return std::clamp(kLeastPixels / text, kLeast, 1.0f);
}

struct Column {
  std::vector<size_t> items;
  Box box;
  bool left = false;
};

void placeColumn(const Column& column, const std::vector<LevelItem>& items,
                 const SheetLayout& layout, const LevelColumnWidths& widths,
                 const MeasureLevel& measure, std::vector<LevelLine>& out) {
  const size_t perLine = std::max<size_t>(1, layout.levelPlan.perLine);
  const size_t lines = (column.items.size() + perLine - 1) / perLine;
  if (!lines) return;
  const auto trueY = [&](size_t i) { return column.left ? items[i].yLeft : items[i].yRight; };
  const float text = layout.levelPlan.text;
  const float from = column.box.top + text * kLevelLine, to = column.box.bottom;
  const float pitch = std::min(text * kLevelLine, (to - from) / float(lines) * 0.9999f);
  std::vector<float> wanted;
  for (size_t l = 0; l < lines; ++l) {
    const float y = std::clamp(trueY(column.items[l * perLine]), from, to);
    wanted.push_back(wanted.empty() ? y : std::max(y, wanted.back()));
  }
  const auto placed = stackApart(wanted, pitch, from, to);
  const float height = std::min(text, pitch);
  const float cell = column.box.width() / float(perLine);
  for (size_t k = 0; k < column.items.size(); ++k) {
    const size_t l = k / perLine, i = column.items[k];
    const float y = placed ? (*placed)[l] : from + (float(l) + 0.5f) * pitch;
    const float x = column.box.left + float(k % perLine) * cell;
    LevelLine line{i,        column.left, {x, y - height / 2, x + cell, y + height / 2},
                   trueY(i), {},          true};
    line.course = perLine == 1;
    const float room = cell - widths.mark - widths.value - 2 * widths.gap -
                       (line.course ? widths.course + widths.gap : 0);
    // Several names may be written a little smaller, so that they are all said.
    const bool several = items[i].names.size() > 1;
    line.name =
        !several && !items[i].names.empty()
            ? levelNameWhere(items[i].names.front(), items[i].where, room, measure)
            : levelNames(items[i].names, several ? room / smallerNames(text) : room, measure);
    if (const std::string with = line.name + " / " + items[i].lift;
        !items[i].lift.empty() && !line.name.empty() && measure(with, false) <= room)
      line.name = with;
    line.room = room;
    out.push_back(line);
  }
}

}  // namespace

std::string levelNames(const std::vector<std::string>& names, float width,
                       const MeasureLevel& measure) {
  if (names.empty() || width <= 0) return {};
  std::vector<std::string> brief;  // "finished floor" of "finished floor, ground floor"
  for (const std::string& name : names) {
    const std::string what = name.substr(0, name.find(','));
    if (std::find(brief.begin(), brief.end(), what) == brief.end()) brief.push_back(what);
  }
  if (const auto all = joined(names, names.size()); measure(all, false) <= width) return all;
  if (names.size() > 1)
    if (const auto all = joined(brief, brief.size()); measure(all, false) <= width) return all;
  for (size_t count = brief.size(); count > 1;)
    if (const auto text = joined(brief, --count); measure(text, false) <= width) return text;
  // "ground, highest..." says more than "ground".
  const std::string rest = names.size() > 1 ? " +" + std::to_string(names.size() - 1) : "";
  const std::string begun = cutShort(names.size() > 1 ? brief.front() : names.front(),
                                     width - measure(rest, false), measure);
  constexpr size_t kSaysMore = 8;  // letters past the comma, with the dots
  if (names.size() == 1 && begun.size() >= brief.front().size() + kSaysMore) return begun;
  if (measure(brief.front() + rest, false) <= width) return brief.front() + rest;
  return begun.empty() ? begun : begun + rest;
}

std::string levelNameWhere(const std::string& name, const std::string& where, float width,
                           const MeasureLevel& measure) {
  if (!where.empty()) {
    std::vector<size_t> ends;  // of each place in `where`
    for (size_t at = where.find(", "); at != std::string::npos; at = where.find(", ", at + 1))
      ends.push_back(at);
    ends.push_back(where.size());
    for (size_t count = ends.size(); count > 0; --count) {
      std::string text = name + ", " + where.substr(0, ends[count - 1]);
      if (count < ends.size()) text += " + " + std::to_string(ends.size() - count) + " more";
      if (measure(text, false) <= width) return text;
    }
    const std::string many = name + ", " + std::to_string(ends.size()) + " places";
    if (ends.size() > 1 && measure(many, false) <= width) return many;
  }
  return levelNames({name}, width, measure);
}

LevelColumnWidths levelColumnWidths(const std::vector<LevelItem>& items, const SheetLayout& layout,
                                    float mark, const MeasureLevel& measure) {
  LevelColumnWidths widths;
  widths.mark = layout.levelPlan.perLine == 1 ? mark : 0;
  widths.gap = layout.levelPlan.text * 0.45f;
  for (const LevelItem& item : items) {
    widths.value = std::max(widths.value, measure(item.value, true));
    widths.course = std::max(widths.course, measure(item.course, false));
  }
  return widths;
}

std::vector<LevelLine> layOutLevels(const std::vector<LevelItem>& items, const SheetLayout& layout,
                                    const LevelColumnWidths& widths, const MeasureLevel& measure) {
  const std::vector<bool> left = leftOnes(items, std::min(layout.levelPlan.left, items.size()));
  Column columns[2] = {{{}, layout.levels, false}, {{}, layout.levelsLeft, true}};
  for (size_t i = 0; i < items.size(); ++i) columns[left[i] ? 1 : 0].items.push_back(i);
  std::vector<LevelLine> lines;
  for (const Column& column : columns) placeColumn(column, items, layout, widths, measure, lines);
  return lines;
}

}  // namespace viewer
