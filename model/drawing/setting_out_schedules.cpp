#include "model/drawing/setting_out_schedules.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include <glm/geometric.hpp>

#include "model/drawing/site_schedules.h"
#include "model/level_text.h"

namespace model {

namespace {

// Half millimetres are real in masonry: a brick is 102.5 thick.
std::string fineText(double metres) {
  // A half of a tenth goes the same way wherever it was reckoned from.
  const double tenths = std::round(metres * 1e4 + 1e-4) / 10;
  if (std::abs(tenths - std::round(tenths)) < 0.05) return lengthText(metres);
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", tenths);
  return text;
}

std::string pairName(const SettingOut& out, size_t a, size_t b) {
  return out.corners[a].letter + "-" + out.corners[b].letter;
}

SheetTable linesTable(const SettingOut& out, const SetOutLines& lines) {
  SheetTable table;
  table.title = "Lines";
  table.columns = {{"line", false},
                   {"outer face", true},
                   {"inner face", true},
                   {"board before", true},
                   {"board beyond", true}};
  table.note =
      "Lengths between corners. Boards: from the first and the second corner of the name, on the "
      "line of the outer face.";
  const auto& offsets = lines.boards.offsets;
  if (!offsets.empty()) {
    table.columns.push_back({"offset line", true});
    table.note +=
        " Where a board has no room: a string between two stakes, so far outside the outer face "
        "(minus: inside).";
  }
  for (size_t i = 0; i < out.walls.size(); ++i) {
    const WallLine& wall = out.walls[i];
    const FaceLine& inner = out.faces[i].innerFace;
    std::array<std::string, 2> boards{"none", "none"};
    for (const Board& board : lines.boards.boards)
      if (board.wall == i) boards[board.atEnd ? 1 : 0] = lengthText(board.beyond);
    // A wall is named in the order of the file, which may run the other way.
    if (wall.name != pairName(out, wall.from, wall.to)) std::swap(boards[0], boards[1]);
    std::vector<std::string> row{wall.name, lengthText(wall.length),
                                 lengthText(glm::length(inner.end - inner.start)), boards[0],
                                 boards[1]};
    if (!offsets.empty()) {
      const auto own = std::find_if(offsets.begin(), offsets.end(),
                                    [&](const OffsetPair& pair) { return pair.wall == i; });
      row.push_back(own == offsets.end() ? "" : own->found ? lengthText(own->out) : "no room");
    }
    table.rows.push_back(std::move(row));
  }
  return table;
}

SheetTable diagonalsTable(const SettingOut& out, const SetOutLines& lines) {
  SheetTable table;
  table.title = "Diagonals";
  table.columns = {{"corners", false}, {"tape level", true}, {"on the ground", true}};
  table.note =
      "Of the outer face. Equal diagonals prove a rectangle only if its opposite sides are equal "
      "too.";
  for (const Tape& tape : lines.tape.diagonals)
    table.rows.push_back({pairName(out, tape.from, tape.to), lengthText(tape.length),
                          lengthText(tape.length + tape.moreOnGround)});
  return table;
}

// Every corner but the first two, by the tapes that fix it.
SheetTable fixesTable(const SettingOut& out, const SetOutLines& lines) {
  SheetTable table;
  table.title = "Corners by tape, in this order";
  table.columns = {{"corner", false}, {"from", false}, {"and from", false}, {"check", false}};
  table.note = "Tapes level. ! The arcs cross flat: check it twice.";
  const auto words = [&](const Tape& tape) {
    return out.corners[tape.from].letter + " " + lengthText(tape.length);
  };
  for (const TapeFix& fix : lines.tape.fixes)
    table.rows.push_back({out.corners[fix.corner].letter + (fix.weak ? " !" : ""),
                          words(fix.tapes[0]), words(fix.tapes[1]),
                          fix.check ? words(*fix.check) : ""});
  return table;
}

SheetTable trianglesTable(const SettingOut& out, const SetOutLines& lines) {
  SheetTable table;
  table.title = "Triangles at the corners";
  table.columns = {{"corner", false},
                   {"along the wall before", true},
                   {"along the wall after", true},
                   {"across", true},
                   {"", false}};
  for (const CornerTriangle& triangle : lines.tape.corners) {
    if (triangle.inLine || triangle.before <= 0) continue;
    std::string kind = "not square";
    if (triangle.square && triangle.ratio[0] > 0)
      kind = std::to_string(triangle.ratio[0]) + "-" + std::to_string(triangle.ratio[1]) + "-" +
             std::to_string(triangle.ratio[2]);
    else if (triangle.square)
      kind = "square";
    table.rows.push_back({out.corners[triangle.corner].letter, lengthText(triangle.before),
                          lengthText(triangle.after), lengthText(triangle.across), kind});
  }
  return table;
}

// "right-hand" from "right-hand end".
std::string sideOf(const Board& board) {
  return board.measuredFrom.substr(0, board.measuredFrom.find(' '));
}

// A row for each board, a column for each line that any of them carries.
SheetTable marksTable(const SetOutLines& lines) {
  SheetTable table;
  table.title = "Marks on the boards";
  table.columns = {{"board", false}, {"top", true}};
  std::vector<std::string> keys;
  for (const Board& board : lines.boards.boards)
    for (const BoardMark& mark : board.marks)
      if (std::find(keys.begin(), keys.end(), mark.key) == keys.end()) {
        keys.push_back(mark.key);
        table.columns.push_back({mark.name, true});
      }
  std::string end;
  bool oneEnd = true;
  for (const Board& board : lines.boards.boards) {
    if (end.empty()) end = board.measuredFrom;
    oneEnd = oneEnd && board.measuredFrom == end;
  }
  if (!oneEnd) table.columns.insert(table.columns.begin() + 1, {"from end", false});
  for (const Board& board : lines.boards.boards) {
    std::vector<std::string> row{board.name};
    if (!oneEnd) row.push_back(sideOf(board));
    row.push_back(levelText(board.top));
    for (const std::string& key : keys) {
      const auto mark = std::find_if(board.marks.begin(), board.marks.end(),
                                     [&](const BoardMark& each) { return each.key == key; });
      row.push_back(mark == board.marks.end() ? "" : fineText(mark->along));
    }
    table.rows.push_back(std::move(row));
  }
  table.note = "Along the board from " + (oneEnd ? "its " + end : std::string("the end named")) +
               ", seen from behind it, facing the building.";
  return table;
}

}  // namespace

std::vector<SheetTable> settingOutSchedules(const Job& job, const SettingOut& out,
                                            const SetOutLines& lines) {
  const auto levels = levelsTables(job, out);
  std::vector<SheetTable> tables{linesTable(out, lines),
                                 diagonalsTable(out, lines),
                                 cornersTable(job, out),
                                 offsetsTable(job, out),
                                 benchMarksTable(job),
                                 limitsTable(lines),
                                 levels[0],
                                 fixesTable(out, lines),
                                 trianglesTable(out, lines),
                                 marksTable(lines),
                                 levels[1]};
  std::erase_if(tables, [](const SheetTable& table) { return table.rows.empty(); });
  return tables;
}

}  // namespace model
