// Lines that a stage is set out or built to, with their distances from the outer face.
#include <algorithm>
#include <cmath>
#include <set>

#include "model/drawing/brief_facts.h"
#include "model/level_text.h"

namespace model {

namespace {

constexpr double kSame = 0.0005;

// A line along walls, by how far inward of the outer face it lies.
struct FaceRow {
  std::string name;
  double inward = 0;
  std::set<std::string> walls;
};

void put(std::vector<FaceRow>& rows, const std::string& name, double inward,
         const std::string& wall) {
  auto at = std::find_if(rows.begin(), rows.end(), [&](const FaceRow& row) {
    return row.name == name && std::abs(row.inward - inward) < kSame;
  });
  if (at == rows.end()) at = rows.insert(rows.end(), FaceRow{name, inward, {}});
  at->walls.insert(wall);
}

// What of a wall's lines an element is built or dug to.
void putFacesOf(const Element& element, const WallFaces& faces, std::vector<FaceRow>& rows) {
  const auto line = [&](const FaceLine& face) { put(rows, face.name, face.inward, element.wall); };
  switch (element.kind) {
    case ElementKind::OuterLeaf:
      line(faces.outerFace);
      line(faces.outerLeafBack);
      break;
    case ElementKind::InnerLeaf:
      line(faces.innerLeafFront);
      line(faces.innerFace);
      break;
    case ElementKind::Foundation:
      line(faces.foundationOuter);
      line(faces.foundationInner);
      break;
    default:
      break;
  }
}

bool isOfFoundations(StageKind kind) {
  return kind == StageKind::TrenchDig || kind == StageKind::TrenchBlinding ||
         kind == StageKind::LevelPins || kind == StageKind::FoundationPour;
}

std::string offsetWords(double inward) {
  if (std::abs(inward) < kSame) return "0";
  return lengthText(std::abs(inward)) + (inward > 0 ? " inside" : " outside");
}

std::string wallsWords(const std::set<std::string>& walls, const SettingOut& out) {
  if (walls.size() == out.walls.size()) return walls.size() == 1 ? *walls.begin() : "all";
  std::string words;
  for (const WallLine& wall : out.walls)
    if (walls.count(wall.name)) words += (words.empty() ? "" : ", ") + wall.name;
  return words;
}

}  // namespace

SheetTable BriefFacts::linesTable(size_t stage) const {
  const SettingOut& out = model_.settingOut;
  const Stage& self = model_.programme.stages[stage];
  std::vector<FaceRow> rows;
  // Strings say themselves which line of which wall they are.
  for (const StringLine& line : model_.works.strings) {
    if (model_.programme.indexOf(line.placed.stage) != stage) continue;
    for (size_t i = 0; i < out.walls.size(); ++i) {
      const std::string& wall = out.walls[i].name;
      if (!line.name.starts_with(wall + " ")) continue;
      const std::string name = line.name.substr(wall.size() + 1);
      const Vec2 a{line.a.x, line.a.y};
      const Vec2 off = a - out.walls[i].start;
      put(rows, name, -(off.x * out.walls[i].outward.x + off.y * out.walls[i].outward.y), wall);
      break;
    }
  }
  for (const Element* element : placed_[stage])
    if (const auto wall = out.wallNamed(element->wall))
      putFacesOf(*element, out.faces[*wall], rows);
  if (rows.empty() && isOfFoundations(self.key.kind))
    for (const FoundationRun& run : out.foundations) {
      if (run.onCellar) continue;
      for (const FaceLine* face :
           {&out.faces[run.wall].foundationOuter, &out.faces[run.wall].foundationInner})
        put(rows, face->name, face->inward, out.walls[run.wall].name);
    }
  if (self.key.kind == StageKind::Render)
    for (const WallLine& wall : out.walls)
      put(rows, "rendered face", out.faceDistances.finishedFace, wall.name);
  std::stable_sort(rows.begin(), rows.end(),
                   [](const FaceRow& a, const FaceRow& b) { return a.inward < b.inward; });
  SheetTable table;
  table.columns = {{"line", false}, {"off, mm", false}, {"walls", false}};
  for (const FaceRow& row : rows)
    table.rows.push_back({row.name, offsetWords(row.inward), wallsWords(row.walls, out)});
  return table;
}

SheetTable BriefFacts::tapeTable(size_t stage) const {
  const Stage& self = model_.programme.stages[stage];
  SheetTable table;
  table.columns = {{"corners", false}, {"mm", true}, {"read", true}, {"off", true}};
  if (self.key.kind != StageKind::SettingOut && self.key.kind != StageKind::LinesBack) return table;
  const auto& corners = model_.settingOut.corners;
  for (const std::vector<Tape>* tapes : {&tape_.sides, &tape_.diagonals})
    for (const Tape& tape : *tapes)
      table.rows.push_back({(tape.side ? "side " : "diagonal ") + corners[tape.from].letter + "-" +
                                corners[tape.to].letter,
                            lengthText(tape.length), "", ""});
  return table;
}

}  // namespace model
