// What a row of readings means, held against the job: names, places and likely numbers.
#pragma once

#include <map>
#include <string>

#include "model/job/reading_points.h"
#include "model/job/reading_row.h"

namespace model {

class ReadingChecks {
 public:
  ReadingChecks(const Job& job, const std::string& file, Problems& problems)
      : job_(job), file_(file), problems_(problems), points_(job) {}

  // The reading in the model's metres; nothing, with the problem added, when it cannot be.
  std::optional<Reading> accept(const ReadingRow& row, Reading reading);

 private:
  bool target(const ReadingRow& row, const Reading& reading);
  bool placeOfLevel(const ReadingRow& row, const Reading& reading);
  bool placeOnPlan(const ReadingRow& row, const Reading& reading);
  bool isOfPin(const Reading& reading, const PinWord& pin) const;
  bool wrongPin(const ReadingRow& row, const PinWord& pin);
  bool along(const ReadingRow& row, const Reading& reading, size_t wall);
  bool setUp(const ReadingRow& row, const Reading& reading);
  bool value(const ReadingRow& row, const Reading& reading);
  bool level(const ReadingRow& row, const Reading& reading);
  bool staff(const ReadingRow& row, const Reading& reading);
  bool tape(const ReadingRow& row, const Reading& reading);
  bool corner(const ReadingRow& row, const Reading& reading);
  bool extras(const ReadingRow& row, const Reading& reading);
  bool once(const ReadingRow& row, const Reading& reading);

  bool fail(const ReadingRow& row, ReadingColumn column, std::string what, std::string instead);
  void warn(const ReadingRow& row, ReadingColumn column, std::string what, std::string instead);
  bool unknownPoint(const ReadingRow& row, const std::string& what,
                    const std::vector<std::string>& names, const std::string& other);

  const Job& job_;
  const std::string& file_;
  Problems& problems_;
  ReadingPoints points_;
  std::map<std::string, int> lineOf_;  // of what was read
};

}  // namespace model
