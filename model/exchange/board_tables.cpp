// Boards and offset lines as a table.
#include "model/exchange/line_tables.h"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

// A column for each of these, after the fixed ones.
struct MarkColumn {
  std::string key, heading;
};

std::vector<MarkColumn> markColumns(const SetOutLines& lines) {
  // From outside in, as they lie on most walls.
  static const std::vector<MarkColumn> all{{"render-face", "render mm"},
                                           {"foundation-outer", "foundation outer mm"},
                                           {"cellar-wall-outer", "cellar wall outer mm"},
                                           {"outer-face", "outer face mm"},
                                           {"outer-leaf-back", "back of outer leaf mm"},
                                           {"inner-leaf-front", "front of inner leaf mm"},
                                           {"inner-face", "inner face mm"},
                                           {"cellar-wall-inner", "cellar wall inner mm"},
                                           {"foundation-inner", "foundation inner mm"}};
  std::vector<MarkColumn> used;
  for (const MarkColumn& column : all) {
    const auto is = [&](const auto& mark) { return mark.key == column.key; };
    const bool any =
        std::any_of(
            lines.boards.boards.begin(), lines.boards.boards.end(),
            [&](const Board& b) { return std::any_of(b.marks.begin(), b.marks.end(), is); }) ||
        std::any_of(
            lines.boards.offsets.begin(), lines.boards.offsets.end(),
            [&](const OffsetPair& p) { return std::any_of(p.faces.begin(), p.faces.end(), is); });
    if (any) used.push_back(column);
  }
  return used;
}

template <typename Marks, typename Distance>
void addMarks(std::vector<std::string>& row, const std::vector<MarkColumn>& columns,
              const Marks& marks, const Distance& distanceOf) {
  for (const MarkColumn& column : columns) {
    const auto found = std::find_if(marks.begin(), marks.end(),
                                    [&](const auto& mark) { return mark.key == column.key; });
    row.push_back(found == marks.end() ? "" : lengthText(distanceOf(*found)));
  }
}

// The marks down the side; across, the walls that have the same.
Table marksTable(const Table& boards, size_t marks) {
  constexpr size_t kFirst = 6;  // column of the first mark
  struct Group {
    std::vector<std::string> walls, cells;
    bool fromString = false;
  };
  std::vector<Group> groups;
  for (const auto& row : boards.rows) {
    const bool fromString = row[2] != "board";
    const std::vector<std::string> cells(row.begin() + kFirst,
                                         row.begin() + kFirst + static_cast<long>(marks));
    auto same = std::find_if(groups.begin(), groups.end(), [&](const Group& g) {
      return g.cells == cells && g.fromString == fromString;
    });
    if (same == groups.end()) same = groups.insert(same, {{}, cells, fromString});
    // Both ends of a wall come one after the other.
    if (same->walls.empty() || same->walls.back() != row[0]) same->walls.push_back(row[0]);
  }
  Table table;
  table.title = "Marks, mm: on boards from the end outside the building";
  table.columns = {"mark"};
  table.numeric = {false};
  for (const Group& group : groups) {
    std::string heading = group.fromString ? "from the string of " : "";
    for (const std::string& wall : group.walls)
      heading += (wall == group.walls.front() ? "" : ", ") + wall;
    table.columns.push_back(heading);
    table.numeric.push_back(true);
  }
  for (size_t k = 0; k < marks; ++k) {
    std::string name = boards.columns[kFirst + k];
    name.erase(name.size() - 3);  // " mm"
    std::vector<std::string> row{name};
    for (const Group& group : groups) row.push_back(group.cells[k]);
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace

LinePart boardsPart(const Model& model, const SetOutLines& lines) {
  LinePart part;
  part.key = "boards";
  Table& table = part.table;
  table.title = "Profile boards of " + model.job.name;
  table.columns = {"wall", "beyond corner", "what", "marks from", "beyond mm", "top m"};
  table.numeric = {false, false, false, false, true, true};
  table.detail.assign(table.columns.size(), false);
  const std::vector<MarkColumn> columns = markColumns(lines);
  for (const MarkColumn& column : columns) {
    table.columns.push_back(column.heading);
    table.numeric.push_back(true);
    table.detail.push_back(true);
  }
  for (const char* down : {"down to concrete mm", "down to formation mm"}) {
    table.columns.emplace_back(down);
    table.numeric.push_back(true);
    table.detail.push_back(false);
  }
  table.columns.emplace_back("lines go to");
  table.numeric.push_back(false);
  table.detail.push_back(false);
  const auto wallName = [&](size_t wall) { return model.settingOut.walls[wall].name; };
  for (const Board& board : lines.boards.boards) {
    std::vector<std::string> row{
        wallName(board.wall),     board.corner,        "board", board.measuredFrom,
        lengthText(board.beyond), levelText(board.top)};
    addMarks(row, columns, board.marks, [](const BoardMark& mark) { return mark.along; });
    row.push_back(lengthText(board.downToConcrete));
    row.push_back(lengthText(board.downToFormation));
    row.push_back(board.opposite.empty() ? "no board: a mark on what stands there"
                                         : "board " + board.opposite);
    table.rows.push_back(std::move(row));
  }
  for (const OffsetPair& pair : lines.boards.offsets) {
    const WallLine& wall = model.settingOut.walls[pair.wall];
    if (!pair.found) {
      part.words.push_back("Wall " + wall.name + ": " + pair.why +
                           ", and none for the stakes of an offset line: agree before the dig how "
                           "that line is kept, such as marks on what stands there");
      continue;
    }
    for (size_t k = 0; k < 2; ++k) {
      const OffsetPair::Stake& stake = pair.stakes[k];
      std::vector<std::string> row{
          wall.name,
          model.settingOut.corners[k == 0 ? wall.from : wall.to].letter,
          "offset stake",
          "the string",
          (stake.beyond < -0.0005 ? "-" : "") + lengthText(std::abs(stake.beyond)),
          levelText(stake.top)};
      addMarks(row, columns, pair.faces, [](const OffsetPair::ToFace& f) { return f.across; });
      for (int empty = 0; empty < 2; ++empty) row.emplace_back();
      row.push_back("offset stake at " +
                    model.settingOut.corners[k == 0 ? wall.to : wall.from].letter);
      table.rows.push_back(std::move(row));
    }
    part.words.push_back(
        "Wall " + wall.name + ": " + pair.why + ". String an offset line " + offsetWords(pair.out) +
        " and measure every face from it, square across" +
        (pair.out < 0 ? ", towards the outside where the figure has a minus" : ""));
  }
  if (!lines.boards.boards.empty())
    part.words.push_back(
        "Right and left are seen from behind the board, facing the building; all "
        "boards stand at one level");
  part.more.push_back(marksTable(table, columns.size()));
  return part;
}

}  // namespace model
