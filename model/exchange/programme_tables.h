// The programme as tables: dates and floats, output rates, events, look-aheads, two plans compared.
#pragma once

#include "model/exchange/table_part.h"

namespace model {

// Days as people write them: "4", "0.5".
std::string daysText(double days);

// Early and late dates, floats and crews of every stage.
TablePart datesPart(const Model& model);
// What each stage's days are worked out from.
TablePart ratesPart(const Model& model);
// Hold points, deliveries, muck-away and decisions by date.
TablePart eventsPart(const Model& model);
// Day by day from a date, for so many days of the calendar: who does what, and what happens.
TablePart lookAheadPart(const Model& model, long from, int days);
// Stage by stage what moved between two plans of one job; stages are matched by their ids.
TablePart comparisonPart(const Model& before, const Model& after);

}  // namespace model
