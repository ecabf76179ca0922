// Lines against the site, tape checks and limits as tables.
#include "model/exchange/line_tables.h"

#include <algorithm>
#include <cmath>

#include "model/decimal_text.h"

namespace model {
namespace {

void addSite(std::vector<std::string>& row, const LineToSite& to) {
  const auto square = [](const std::optional<double>& d) { return d ? lengthText(*d) : ""; };
  row.push_back(to.to);
  row.push_back(square(to.squareAtStart));
  row.push_back(square(to.squareAtEnd));
  row.push_back(lengthText(to.atStart.distance));
  row.push_back(lengthText(to.atEnd.distance));
  row.push_back(lengthText(to.nearest.distance));
  row.push_back(lengthText(std::abs(to.nearest.running)));
}

std::string parallelText(const Model& model, const ParallelGroup& group, size_t index) {
  const WallLine& base = model.settingOut.walls[group.lines[0].wall];
  const ParallelLine& line = group.lines[index];
  if (index == 0) return "measure from it";
  const double out = std::abs(line.far - line.near);
  const std::string from = " from " + base.name;
  if (!group.parallel || out >= 0.0005)
    return lengthText(std::abs(line.near)) + " to " + lengthText(std::abs(line.far)) + from +
           ": not parallel";
  if (std::abs(line.near) < 0.0005) return "in line with " + base.name;
  return lengthText(std::abs(line.near)) + from;
}

LinePart linesPart(const Model& model, const SetOutLines& lines) {
  LinePart part;
  part.key = "lines";
  Table& table = part.table;
  table.title = "Lines of " + model.job.name + " against the site, from the finished face";
  table.columns = {"wall",
                   "length mm",
                   "parallel",
                   "to",
                   "square at first corner mm",
                   "square at second mm",
                   "shortest at first corner mm",
                   "shortest at second mm",
                   "nearest mm",
                   "nearest at mm along"};
  table.numeric = {false, true, false, false, true, true, true, true, true, true};
  for (const SetOutLine& line : lines.lines) {
    std::string parallel;
    for (const ParallelGroup& group : lines.parallels) {
      for (size_t i = 0; i < group.lines.size(); ++i) {
        if (group.lines[i].wall == line.wall) parallel = parallelText(model, group, i);
      }
    }
    const std::vector<std::string> begin{model.settingOut.walls[line.wall].name,
                                         lengthText(line.length), parallel};
    for (const auto* to : {&line.boundary, &line.building}) {
      if (!*to) continue;
      table.rows.push_back(begin);
      addSite(table.rows.back(), **to);
    }
    if (line.boundary || line.building) continue;
    table.rows.push_back(begin);
    table.rows.back().resize(table.columns.size());
  }
  for (const ParallelGroup& group : lines.parallels) {
    if (group.parallel) continue;
    part.words.push_back("Wall " + model.settingOut.walls[group.lines[0].wall].name +
                         " has a wall nearly parallel to it: ask the designer whether it is meant "
                         "to be");
  }
  part.words.push_back(
      "The designer's figured dimensions rule; measure an existing building in "
      "several places, it is rarely straight");
  return part;
}

LinePart tapePart(const Model& model, const SetOutLines& lines) {
  LinePart part;
  part.key = "tape";
  part.words = lines.tape.words;
  Table& table = part.table;
  table.title = "Tape checks of " + model.job.name + ", outer face, tape held level";
  table.columns = {"for", "from", "to", "distance mm", "crosses at deg", "laid on the ground mm",
                   "note"};
  table.numeric = {false, false, false, true, true, true, false};
  const auto letter = [&](size_t corner) { return model.settingOut.corners[corner].letter; };
  const auto addTape = [&](const std::string& what, const Tape& tape, const std::string& angle,
                           std::string note) {
    if (tape.tooLong)
      note += std::string(note.empty() ? "" : "; ") + "longer than the tape: in two, in line";
    table.rows.push_back({what, letter(tape.from), letter(tape.to), lengthText(tape.length), angle,
                          lengthText(tape.length + tape.moreOnGround), note});
  };
  const TapeChecks& tape = lines.tape;
  for (size_t i = 0; i < tape.sides.size(); ++i)
    addTape("side " + model.settingOut.walls[i].name, tape.sides[i], "",
            i == tape.base ? "start from it" : "");
  for (const Tape& diagonal : tape.diagonals) addTape("diagonal", diagonal, "", "");
  for (const TapeFix& fix : tape.fixes) {
    const std::string what = "fix corner " + letter(fix.corner);
    addTape(what, fix.tapes[0], "", "first tape");
    addTape(what, fix.tapes[1], decimalText(fix.angle, 1),
            fix.weak ? "second tape; flat crossing, check it twice" : "second tape");
    if (fix.check) addTape(what, *fix.check, "", "check");
  }
  const size_t n = model.settingOut.walls.size();
  for (const CornerTriangle& t : tape.corners) {
    const std::string before = model.settingOut.walls[(t.corner + n - 1) % n].name;
    const std::string after = model.settingOut.walls[t.corner].name;
    if (t.across <= 0) {
      table.rows.push_back({"corner " + letter(t.corner), before, after, "",
                            decimalText(t.angle, 1), "",
                            t.inLine ? "in line: one string through" : "walls too short"});
      continue;
    }
    const std::string ratio = std::to_string(t.ratio[0]) + "-" + std::to_string(t.ratio[1]) + "-" +
                              std::to_string(t.ratio[2]);
    table.rows.push_back({(t.square ? "square corner " : "corner ") + letter(t.corner),
                          lengthText(t.before) + " along " + before,
                          lengthText(t.after) + " along " + after, lengthText(t.across),
                          decimalText(t.angle, t.square ? 0 : 2), "",
                          t.square ? ratio : "not square: the drawing's angle"});
  }
  return part;
}

LinePart limitsPart(const Model& model, const SetOutLines& lines) {
  LinePart part;
  part.key = "limits";
  Table& table = part.table;
  table.title = "Limits of " + model.job.name;
  table.columns = {"verdict", "what", "is", "allowed", "unit", "words", "reaching further, to mm",
                   "note"};
  table.numeric = {false, false, true, true, false, false, false, false};
  bool any = false;
  for (const LimitTest& test : lines.limits) {
    const bool level = test.kind == LimitKind::Ridge || test.kind == LimitKind::Eaves;
    const bool told = test.verdict == LimitVerdict::Told;
    any = any || !told;
    const auto text = [&](double value) {
      if (level) return levelText(value);
      if (value > 1e299) return std::string();
      return (value < 0 ? "-" : "") + lengthText(std::abs(value));
    };
    table.rows.push_back({shapeOf(test.verdict), test.what, text(test.found),
                          told ? "" : text(test.allowed), level ? "m" : "mm",
                          told ? "no limit given" : test.words, test.further, test.note});
  }
  if (!any) part.words.push_back("The job gives no limits: [[limit]] sets one");
  part.words.push_back("Distances are on plan from the finished face, render included");
  return part;
}

}  // namespace

std::vector<LinePart> lineParts(const Model& model, const SetOutLines& lines, const SetUp* setUp) {
  return {boardsPart(model, lines), linesPart(model, lines), tapePart(model, lines),
          limitsPart(model, lines), pinsPart(model, setUp)};
}

}  // namespace model
