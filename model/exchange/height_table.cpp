#include "model/exchange/height_table.h"

#include <cmath>
#include <cstdio>

#include "model/asbuilt/as_built.h"
#include "model/checks/level_beds.h"
#include "model/settingout/height_gauge.h"

namespace model {
namespace {

std::string tenths(double metres) {
  char text[32];
  const double mm = std::round(metres * 1e4) / 10;
  std::snprintf(text, sizeof text, "%.1f", mm == 0 ? 0.0 : mm);
  return text;
}

std::string signedLength(double metres) {
  const std::string text = lengthText(metres);
  return text == "0" || text[0] == '-' ? text : "+" + text;
}

// What all beds of that height would be if they shared what is over.
std::string bedText(const CourseHeight& height) {
  if (height.courses == 0) return "";
  return tenths(height.bed) + (height.bedWithin ? "" : ", not 8 to 12");
}

}  // namespace

TablePart heightsPart(const Model& model) {
  TablePart part;
  part.key = "heights";
  Table& table = part.table;
  table.title = "Heights in courses from the damp course at " +
                levelText(model.settingOut.levels.dampCourse) + ", " + model.job.name;
  table.columns = {"what",    "where",   "level m",         "height mm",
                   "courses", "over mm", "beds, shared mm", "comes out"};
  table.numeric = {false, false, true, true, true, true, false, false};
  bool cut = false;
  for (const CourseHeight& height : courseHeights(model.job, model.settingOut)) {
    table.rows.push_back({height.what, height.where, levelText(height.level),
                          lengthText(height.height), std::to_string(height.courses),
                          signedLength(height.over), bedText(height), comesOutText(height)});
    cut = cut || height.cutCourse != 0;
  }
  if (cut)
    part.words.push_back(
        "Where it does not come out, units are cut or every bed up to there is shared out on the "
        "rod, level all round the building; the drawing decides which");
  const std::vector<UnevenBed> uneven = unevenBeds(model.works, model.settingOut.levels.dampCourse);
  for (const UnevenBed& bed : uneven)
    part.words.push_back("No tie lies level there: " + unevenBedText(bed));
  if (uneven.empty())
    part.words.push_back(
        "Every block bed from the damp course to the eaves has a brick bed level "
        "with it, so ties lie level");
  for (const FirstBed& bed : deriveAsBuilt(model.job, model.settingOut).beds)
    if (!bed.asDrawn) part.words.push_back("As read: " + bed.words);
  return part;
}

}  // namespace model
