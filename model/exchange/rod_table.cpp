#include "model/exchange/rod_table.h"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

struct Line {
  double level = 0;
  std::string mark, where, key;
  std::string odd;  // of the course that ends there, away from the damp course
};

std::string signedLength(double metres) {
  const std::string text = lengthText(metres);
  return text == "0" || text[0] == '-' ? text : "+" + text;
}

// The course lines of the rod, lowest first.
std::vector<Line> courseLines(const GaugeRod& rod) {
  std::vector<Line> lines;
  for (const RodCourse& course : rod.courses)
    lines.push_back(
        {course.number > 0 ? course.top() : course.bottom, "", "", "", oddCourseText(course)});
  return lines;
}

// With the marks, each taking over the words of the course line that it lies on.
std::vector<Line> linesOf(const GaugeRod& rod) {
  std::vector<Line> lines;
  std::vector<Line> courses = courseLines(rod);
  for (const GaugeMark& mark : rod.marks) {
    Line line{mark.level, mark.name, mark.where, mark.key, ""};
    const auto same = std::find_if(courses.begin(), courses.end(), [&](const Line& course) {
      return std::fabs(course.level - mark.level) < 5e-4;
    });
    if (same != courses.end()) {
      line.odd = same->odd;
      courses.erase(same);
    }
    lines.push_back(line);
  }
  lines.insert(lines.end(), courses.begin(), courses.end());
  std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) {
    return std::lround(a.level * 1000) > std::lround(b.level * 1000);
  });
  return lines;
}

}  // namespace

Table rodsTable(const Model& model, const std::vector<GaugeRod>& rods) {
  Table table;
  table.title = "Gauge rods of " + model.job.name + ", marked from the damp course, metres above " +
                model.job.datumNote;
  table.columns = {"corner", "level m", "from damp course mm", "course",
                   "mark",   "where",   "odd course",          "key"};
  table.numeric = {false, true, true, false, false, false, false, false};
  table.detail = {false, false, false, false, false, false, false, true};
  for (const GaugeRod& rod : rods) {
    for (const Line& line : linesOf(rod)) {
      table.rows.push_back({model.settingOut.corners[rod.corner].letter, levelText(line.level),
                            signedLength(line.level - rod.dampCourse),
                            coursePlaceText(rod, line.level), line.mark, line.where, line.odd,
                            line.key});
    }
  }
  return table;
}

std::vector<std::string> rodWords(const SettingOut& out, const std::vector<GaugeRod>& rods) {
  std::vector<std::string> words;
  for (const GaugeRod& rod : rods)
    words.push_back("Corner " + out.corners[rod.corner].letter + ": " + rodSummary(rod));
  return words;
}

}  // namespace model
