// Tables on sheets: they never leave the place they are given. Cells wrap, columns give way, and
// what is left goes on where there is room next.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "model/drawing/paragraph.h"
#include "model/drawing/sheet.h"

namespace model {

// Room at the left and right of the words in a cell, mm.
inline constexpr double kCellPad = 1;

struct SheetTable {
  struct Column {
    std::string heading;
    bool numeric = false;  // to the right
  };
  std::string title;
  std::vector<Column> columns;
  std::vector<std::vector<std::string>> rows;
  std::string note;  // beneath the last row; may be empty
};

struct TableStyleOnSheet {
  double letters = 1.8;  // of rows; titles are 2.5
  double between = 5;    // tables, mm
};

// Draws every table one beneath the other into the places, and asks for more when they are full. A
// table that goes on has its title and headings again with "continued". A table starts in a new
// place rather than with fewer than two rows in this one. Returns how much of the last used place
// is left: its lower edge is where the tables end. `nextPlace` must always give room for a few
// rows.
TablePlace drawTables(Drawing& drawing, const std::vector<SheetTable>& tables, TablePlace first,
                      const std::function<TablePlace(Drawing&)>& nextPlace,
                      const TextWidth& widthOf, const TableStyleOnSheet& style = {});

// Widths of the columns in `width`: what they would like, and when that is too much the widest give
// way first, down to their widest word and then below. Their sum is at most `width`.
std::vector<double> columnWidths(const SheetTable& table, double width, const TextWidth& widthOf,
                                 const TableStyleOnSheet& style);

}  // namespace model
