// The numbers of a stage that its crew works to. Private to this folder.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/drawing/sheet_table.h"
#include "model/levelling/instrument.h"
#include "model/lines/tape.h"
#include "model/model.h"
#include "model/takeoff/loading.h"

namespace model {

// A level that comes to be in a stage.
struct LevelToHit {
  std::string what;   // "top of concrete"
  std::string where;  // "A-B, F-A"; may be empty
  double level = 0;
};

// Rows of a table, by the words of its first column.
class BriefFacts {
 public:
  // What every page asks for is worked out once. The model must outlive it.
  explicit BriefFacts(const Model& model);

  // For marking the walls, the concrete at each corner. Else, highest first: those of the schedule
  // that are there from this stage on; tops of courses that it goes up to; for work that the
  // schedule does not have, level tops of what is made.
  std::vector<LevelToHit> levels(size_t stage) const;
  // Columns: level, m, staff, then read and off to be written in.
  SheetTable levelsTable(size_t stage) const;
  // Lines that are pulled or built to, with their distances from the outer face, and the walls.
  SheetTable linesTable(size_t stage) const;
  // From corner to corner, where the stage is for setting out.
  SheetTable tapeTable(size_t stage) const;
  // First and last course of each leaf.
  SheetTable coursesTable(size_t stage) const;
  // Of the takeoff by stage: net and what to order.
  SheetTable quantitiesTable(size_t stage) const;
  // What to stand ready at which wall; empty when the stage lays nothing.
  SheetTable loadingTable(size_t stage) const;
  SheetTable deliveriesTable(size_t stage) const;

  // A scaffold stands while it is done.
  bool onScaffold(size_t stage) const;

  // The elements that a stage places, or takes away.
  std::vector<const Element*> placed(size_t stage) const;
  std::vector<const Element*> removed(size_t stage) const;

 private:
  // One of the job's set-ups, from when on it can stand where it is said to.
  struct Standing {
    std::string name;
    Instrument instrument;
    double from = -1;
  };
  std::string staffOf(size_t stage, double level) const;

  const Model& model_;
  std::vector<double> levelTimes_;
  std::vector<Standing> standings_;
  std::vector<LiftLoad> loads_;
  std::vector<std::vector<const Element*>> placed_, removed_;
  TapeChecks tape_;
};

}  // namespace model
