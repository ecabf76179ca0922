#include "model/drawing/setting_out_sheet.h"

#include <algorithm>
#include <array>

#include "model/drawing/setting_out_layout.h"
#include "model/drawing/setting_out_plan.h"
#include "model/drawing/setting_out_schedules.h"
#include "model/drawing/sheet_table.h"
#include "model/drawing/title_block.h"
#include "model/drawing/wrap_text.h"
#include "model/lines/set_out_lines.h"

namespace model {

namespace {

constexpr double kGap = kSheetGap;

const std::array<const char*, 2> kNoteLines{
    "Check against the designer's drawing before setting out: its figured dimensions rule. Do not "
    "scale from this sheet.",
    "Lines are between corners of the outer face of the masonry. Find buried services before any "
    "stake is driven."};

void drawNotes(Sheet& sheet, const Area& area, const TextWidth& widthOf, bool siteIsCut) {
  const double barRoom = std::min(70.0, area.width() * 0.35);
  drawScaleBar(sheet, area.low + Vec2{1, 0.5}, barRoom - 15, widthOf);
  const double left = area.low.x + barRoom + 4;
  std::string words;
  for (const char* line : kNoteLines) words += std::string(line) + " ";
  if (siteIsCut) words += "The site goes on beyond the edge of the plan.";
  const Letters letters{1.8, false};
  double y = area.high.y;
  for (const std::string& line : wrapped(words, area.high.x - left, letters, widthOf)) {
    Text text;
    text.layer = Layer::Frame;
    text.text = line;
    text.size = letters.size;
    text.up = Up::Top;
    text.at = {left, y};
    sheet.texts.push_back(text);
    y -= 1.65 * letters.size;
  }
}

void drawPlan(Sheet& sheet, const Area& area, const Job& job, const SettingOut& out,
              const std::vector<LineEnds>& profiles, const SetOutLines& lines,
              const TextWidth& widthOf) {
  PlanPaper plan{job, out, profiles, widthOf, sheet, area, ClearSpace(area)};
  if (out.corners.size() > 12) plan.letters = 1.8;
  drawPlanSite(plan);
  drawPlanBuilding(plan);
  drawPlanProfiles(plan);
  drawCornerLetters(plan);
  drawWallDimensions(plan);
  drawOffsets(plan, lines.limits);
  drawPlanLimits(plan, lines.limits);
  drawDiagonals(plan, lines.tape.diagonals);
  drawPlanNames(plan);
}

// Columns of further sheets from left to right; the last stands on the title block.
class FurtherSheets {
 public:
  FurtherSheets(Paper paper, double width) : paper_(paper), width_(width) {}

  TablePlace next(Drawing& drawing) {
    const Sheet like = blankSheet(paper_, Lie::Landscape);
    const Area border = insideBorder(like);
    const auto columns = size_t((border.width() - kGap) / (width_ + kGap));
    if (column_ == 0 || column_ == columns) {
      drawing.sheets.push_back(like);
      column_ = 0;
    }
    const double pitch = (border.width() - kGap) / double(columns);
    const double left = border.low.x + kGap + double(column_) * pitch;
    Area area{{left, border.low.y + kGap}, {left + pitch - kGap, border.high.y - kGap}};
    if (++column_ == columns) area.low.y = border.low.y + kTitleBlockHeight + kGap;
    return {drawing.sheets.size() - 1, area};
  }

 private:
  Paper paper_;
  double width_;
  size_t column_ = 0;
};

}  // namespace

SettingOutDrawing drawSettingOut(const Job& job, const SettingOut& out,
                                 const SettingOutSheetOptions& options, const TextWidth& widthOf) {
  SettingOutDrawing result;
  const std::vector<LineEnds> profiles = placeProfiles(job, out);
  const SetOutLines lines = deriveLines(job, out);
  const PlanReach reach = reachOf(job, out, profiles);
  const auto choice = chooseSheet(reach, options);
  if (!choice) {
    result.problem = doesNotFit(reach, options);
    return result;
  }
  result.scale = choice->scale;
  result.siteIsCut = choice->siteIsCut;
  const SheetLayout& layout = choice->layout;
  Drawing drawing;
  drawing.title = "Setting-out of " + job.name;
  drawing.sheets.push_back(layout.sheet);
  {
    Sheet& sheet = drawing.sheets.front();
    const PlanExtent needed = extentAt(reach, choice->scale, !choice->siteIsCut);
    const Vec2 middle = (layout.plan.low + layout.plan.high) / 2.0;
    sheet.view = View{double(choice->scale), middle - (needed.low + needed.high) / 2.0};
    drawPlan(sheet, layout.plan, job, out, profiles, lines, widthOf);
    drawNotes(sheet, layout.notes, widthOf, choice->siteIsCut);
  }
  FurtherSheets further(options.paper, layout.column);
  const auto next = [&](Drawing& grown) { return further.next(grown); };
  const Area border = insideBorder(layout.sheet);
  TablePlace first{0,
                   {{border.high.x - layout.column, border.low.y + kTitleBlockHeight + kGap},
                    {border.high.x - kGap, border.high.y - kGap}}};
  if (!layout.beside) first = next(drawing);
  drawTables(drawing, settingOutSchedules(job, out, lines), first, next, widthOf);
  TitleBlock block = titleBlockOf(job, "Setting-out", options.date);
  for (size_t i = 0; i < drawing.sheets.size(); ++i) {
    Sheet& sheet = drawing.sheets[i];
    block.sheet = std::to_string(i + 1) + " of " + std::to_string(drawing.sheets.size());
    block.scale = sheet.view ? "1:" + std::to_string(choice->scale) + " at " + nameOf(options.paper)
                             : "schedules";
    drawTitleBlock(sheet, block, layout.column, widthOf);
    if (i == 0 && layout.beside)
      sheet.line(Layer::Frame, {kPen050, LineType::Continuous},
                 {border.high.x - layout.column - kGap, border.low.y},
                 {border.high.x - layout.column - kGap, border.high.y});
  }
  result.drawing = std::move(drawing);
  return result;
}

}  // namespace model
