// The title block, in the lower right corner of every sheet, and the border.
#pragma once

#include <string>

#include "model/drawing/sheet.h"
#include "model/job/job.h"

namespace model {

struct TitleBlock {
  std::string job;
  std::string drawing;  // "Setting-out"
  std::string sheet;    // "1 of 2"
  std::string scale;    // "1:100 at A3"
  std::string date;     // empty: a line to write it on
  std::string units;    // "lengths mm, levels m"
  std::string benchMark;
  double northBearing = 0;  // degrees clockwise from the sheet's up
};

// Of the job's sheets of one kind; sheet and scale are the sheet's own. `what`: "Setting-out".
TitleBlock titleBlockOf(const Job& job, const std::string& what, const std::string& date);

// Height of the block for any job: it does not grow with its words, they wrap or are shortened.
inline constexpr double kTitleBlockHeight = 37;

// The border of the sheet and, inside it at the lower right, the block `width` mm wide (70 or
// more). Returns the block's area.
Area drawTitleBlock(Sheet& sheet, const TitleBlock& block, double width, const TextWidth& widthOf);

// For the sheets after the first of a report: the border, and job, drawing, date and sheet in one
// row along its foot.
inline constexpr double kTitleStripHeight = 9;
void drawTitleStrip(Sheet& sheet, const TitleBlock& block, const TextWidth& widthOf);

// An arrow in a circle, pointing to true north, its letter beyond the tip.
void drawNorth(Sheet& sheet, const Vec2& centre, double radius, double bearing);

// A bar of round lengths with its lower left end at `at`, no longer than `longest` mm. Only for
// reading off roughly; it shows when a print is not true to scale. Returns what it takes up.
Area drawScaleBar(Sheet& sheet, const Vec2& at, double longest, const TextWidth& widthOf);

}  // namespace model
