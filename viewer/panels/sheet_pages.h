// What stands on each sheet. Private to this folder.
#pragma once

#include "viewer/panels/sheets.h"

namespace viewer {

// The page of sheets.shown(), into the current Dear ImGui window.
void drawPage(SheetsState& sheets, SheetsInput& input);

void stagesPage(SheetsState& sheets, SheetsInput& input);
// A part of the sheet of stages: to the moment of a course.
void courseChoice(SheetsState& sheets, SheetsInput& input);
// The chart of stages over time.
void datesPage(SheetsState& sheets, SheetsInput& input);
void levelsPage(SheetsInput& input);
void readingsPage(SheetsState& sheets, SheetsInput& input);
// "Concrete, Wed 19 May 2027, Foreman".
std::string setWords(const model::ReadingSet& set);
// The line in which a reading is typed, above the readings of its set.
void readingForm(SheetsState& sheets, SheetsInput& input);
void bookPage(SheetsState& sheets, SheetsInput& input);
void quantitiesPage(SheetsState& sheets, SheetsInput& input);
void showPage(SheetsInput& input);
void viewPage(SheetsState& sheets, SheetsInput& input);
void problemsPage(SheetsInput& input);
void keysPage();

// Whether every word of `filter` occurs in the text, whatever the case (of A to Z).
bool matches(const std::string& text, const std::string& filter);

}  // namespace viewer
