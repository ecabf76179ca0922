#include "model/lines/pegs.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <glm/trigonometric.hpp>

#include "model/lines/face_list.h"
#include "model/works/level_pins.h"

namespace model {

namespace {

class PegList {
 public:
  PegList(const Job& job, const SettingOut& out) : job_(job), out_(out) {}

  void add(const std::string& name, const std::string& code, const Vec2& at, double level) {
    SetOutPeg peg;
    peg.name = name;
    for (int more = 2; !names_.insert(peg.name).second; ++more)
      peg.name = name + " (" + std::to_string(more) + ")";
    peg.code = code;
    peg.at = at;
    const Vec2 place = inGrid(job_.site.grid, at);
    peg.east = place.x;
    peg.north = place.y;
    peg.level = level;
    pegs_.push_back(std::move(peg));
  }

  // One peg for each corner of each line: where the lines of two walls meet, the second is the
  // first again.
  void addFaces() {
    for (size_t i = 0; i < out_.walls.size(); ++i) {
      const WallLine& wall = out_.walls[i];
      for (const SetOutFace& face : facesOf(job_, out_, i)) {
        if (isOfCellar(face)) continue;  // its corners are its own
        addFaceEnd(wall, i, face, false);
        addFaceEnd(wall, i, face, true);
      }
    }
  }

  void addCellar() {
    if (!job_.cellar) return;
    const Polygon inner = offsetMitred(out_.cellarOutline, job_.cellar->wall);
    for (size_t i = 0; i < inner.size(); ++i) {
      const std::string name = "K" + std::to_string(i + 1);
      add(name + "-CO", "cellar-wall-outer", out_.cellarOutline[i], out_.levels.cellarSlabTop);
      add(name + "-CI", "cellar-wall-inner", inner[i], out_.levels.cellarSlabTop);
    }
  }

  void addPins() {
    for (const LevelPin& pin : levelPins(job_, out_))
      add("P" + pin.name, "level-pin", pin.at, pin.top);
  }

  std::vector<SetOutPeg> take() { return std::move(pegs_); }

 private:
  void addFaceEnd(const WallLine& wall, size_t index, const SetOutFace& face, bool atEnd) {
    const Vec2 at = atEnd ? face.end : face.start;
    const FoundationRun* run = runAt(index, atEnd);
    const bool foundation = face.key.rfind("foundation", 0) == 0;
    if (foundation && run && run->onCellar) return;  // no concrete of its own there
    const bool there = std::any_of(pegs_.begin(), pegs_.end(), [&](const SetOutPeg& peg) {
      return peg.code == face.key && std::abs(peg.at.x - at.x) < 1e-6 &&
             std::abs(peg.at.y - at.y) < 1e-6;
    });
    if (there) return;
    const std::string& corner = out_.corners[atEnd ? wall.to : wall.from].letter;
    add(corner + "-" + face.code, face.key, at,
        !run         ? out_.levels.foundationTop
        : foundation ? run->formation
                     : run->top);
  }

  static bool isOfCellar(const SetOutFace& face) { return face.key.rfind("cellar-wall", 0) == 0; }

  // The wall's first run, or its last.
  const FoundationRun* runAt(size_t wall, bool atEnd) const {
    const FoundationRun* found = nullptr;
    for (const FoundationRun& run : out_.foundations) {
      if (run.wall == wall && (!found || atEnd)) found = &run;
    }
    return found;
  }

  const Job& job_;
  const SettingOut& out_;
  std::vector<SetOutPeg> pegs_;
  std::set<std::string> names_;
};

}  // namespace

Vec2 inGrid(const std::optional<SiteGrid>& grid, const Vec2& p) {
  if (!grid) return p;
  const double c = std::cos(glm::radians(grid->turn)), s = std::sin(glm::radians(grid->turn));
  return {grid->east + p.x * c + p.y * s, grid->north - p.x * s + p.y * c};
}

std::vector<SetOutPeg> derivePegs(const Job& job, const SettingOut& settingOut,
                                  const BoardPlan& boards) {
  PegList list(job, settingOut);
  list.addFaces();
  list.addCellar();
  for (const Board& board : boards.boards) {
    const std::string name = settingOut.walls[board.wall].name + "/" + board.corner;
    list.add(name + " board, outside end", "board", board.from, board.top);
    list.add(name + " board, inside end", "board", board.to, board.top);
  }
  for (const OffsetPair& pair : boards.offsets) {
    if (!pair.found) continue;
    for (const OffsetPair::Stake& stake : pair.stakes)
      list.add(stake.name, "offset-stake", stake.at, stake.top);
  }
  if (job.site.benchMark)
    list.add(job.site.benchMark->name, "bench-mark", job.site.benchMark->at,
             job.site.benchMark->level);
  for (const BenchMark& mark : job.site.marks)
    list.add(mark.name, "bench-mark", mark.at, mark.level);
  list.addPins();
  return list.take();
}

}  // namespace model
