#include "model/exchange/cellar_bond_table.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "model/level_text.h"
#include "model/walls/wall_names.h"
#include "model/works/cellar_leaves.h"

namespace model {

namespace {

// Courses that are laid alike, by their pieces from end to end.
struct AlikeCourses {
  std::vector<int> numbers;
  int whole = 0;
  std::map<int, int> cut;  // by length, millimetres
  bool split = false;
};

std::vector<AlikeCourses> alike(const LaidLeaf& laid) {
  std::vector<AlikeCourses> all;
  for (size_t band = 0; band < laid.bands.size(); ++band) {
    AlikeCourses course;
    for (size_t i = laid.firstOf[band]; i < laid.firstOf[band + 1]; ++i) {
      const MasonryUnit& unit = laid.units[i];
      course.split |= unit.piece == Piece::Split;
      if (unit.piece == Piece::Whole)
        ++course.whole;
      else
        ++course.cut[static_cast<int>(std::lround(unit.length() * 1000))];
    }
    const int number = laid.bands[band].number + 1;
    const auto same = std::find_if(all.begin(), all.end(), [&](const AlikeCourses& other) {
      return other.whole == course.whole && other.cut == course.cut && other.split == course.split;
    });
    if (same != all.end()) {
      same->numbers.push_back(number);
    } else {
      course.numbers = {number};
      all.push_back(std::move(course));
    }
  }
  return all;
}

std::string numbersText(const std::vector<int>& numbers) {
  std::string text;
  for (const int number : numbers) text += (text.empty() ? "" : ", ") + std::to_string(number);
  return text;
}

std::string cutText(const AlikeCourses& courses) {
  std::string text;
  for (const auto& [length, number] : courses.cut)
    text += (text.empty() ? "" : ", ") + (number > 1 ? std::to_string(number) + " of " : "") +
            std::to_string(length);
  return courses.split && !text.empty() ? text + ", all cut in height" : text;
}

}  // namespace

std::optional<TablePart> cellarBondPart(const Model& model) {
  const CellarLeaves cellar = cellarLeaves(model.job, model.settingOut);
  if (cellar.leaves.empty()) return std::nullopt;
  TablePart part;
  part.key = "cellar";
  Table& table = part.table;
  table.title = "The blocks of the cellar walls, " + model.job.name;
  table.columns = {"wall", "leaf", "courses from the slab", "whole", "cut to mm"};
  table.numeric = {false, false, false, true, false};
  for (size_t wall = 0; wall < cellar.ring.walls.size(); ++wall) {
    for (size_t leaf = 0; leaf < cellar.leaves.size(); ++leaf) {
      const LaidLeaf laid = cellar.laid(model.job.walls, wall, leaf);
      for (const AlikeCourses& row : alike(laid))
        table.rows.push_back({cellar.ring.walls[wall].name, cellar.leaves[leaf].name,
                              numbersText(row.numbers), std::to_string(row.whole), cutText(row)});
    }
  }
  part.words.push_back(*cellarGaugeWords(model));
  return part;
}

void addCellarGauge(const Model& model, Table& rods) {
  const CellarLeaves cellar = cellarLeaves(model.job, model.settingOut);
  if (cellar.leaves.empty()) return;
  const std::vector<CourseBand> bands = cellar.laid(model.job.walls, 0, 0).bands;
  const std::string corners = "K1 to " + cellar.ring.corners.back().letter;
  const auto row = [&](double level, const std::string& course, const char* mark,
                       const std::string& odd, const char* key) {
    const double from = level - model.settingOut.levels.dampCourse;
    rods.rows.push_back(
        {corners, levelText(level), lengthText(from), course, mark, "from the slab", odd, key});
  };
  for (size_t i = bands.size(); i-- > 0;) {
    const bool top = i + 1 == bands.size();
    std::string odd = top ? topCourseWords(model.job.walls, cellar.height()) : "";
    if (!odd.empty()) odd.erase(0, 2);
    row(bands[i].top, std::to_string(i + 1), top ? "top of cellar wall" : "", odd,
        top ? "cellar-wall-top" : "");
  }
  row(cellar.foot, "0", "top of cellar slab", "", "cellar-slab-top");
}

std::optional<std::string> cellarGaugeWords(const Model& model) {
  const CellarLeaves cellar = cellarLeaves(model.job, model.settingOut);
  if (cellar.leaves.empty()) return std::nullopt;
  const size_t courses = cellar.laid(model.job.walls, 0, 0).bands.size();
  return "Cellar walls: " + std::to_string(courses) + " courses of blocks from the slab at " +
         levelText(cellar.foot) + " to their top at " + levelText(cellar.top) +
         topCourseWords(model.job.walls, cellar.height());
}

}  // namespace model
