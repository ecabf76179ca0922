#include "viewer/commands/book_command.h"

#include <cmath>
#include <iostream>

#include "model/exchange/book_table.h"
#include "model/levelling/read_book.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"

namespace viewer {
namespace {

std::optional<std::string> wrongNumber(const BookCommand& options) {
  for (const auto& level : {options.start, options.close}) {
    if (level && !std::isfinite(*level)) return "a level is a number of metres, such as 49.872";
  }
  if (options.staff && !(*options.staff >= 1 && *options.staff <= 10))
    return "--staff is its length in metres, 1 to 10";
  if (options.allow && !(*options.allow > 0 && *options.allow <= 100))
    return "--allow is millimetres, over 0 and up to 100";
  return std::nullopt;
}

}  // namespace

int runBook(const BookCommand& options) {
  if (auto wrong = wrongNumber(options)) return wrongUsage(*wrong);
  model::BookSettings settings;
  settings.start = options.start;
  settings.close = options.close;
  settings.staff = options.staff.value_or(settings.staff);
  if (options.allow) settings.allowance.perSetUp = *options.allow / 1000;
  const model::ReadBookResult read = model::readBookFile(options.file, settings);
  printProblems(read.problems);
  if (!read.book) return kProblems;

  const auto method = options.method == "collimation" ? model::BookMethod::Collimation
                                                      : model::BookMethod::RiseAndFall;
  model::ReducedBook reduced = model::reduceBook(*read.book, settings, method);
  const auto closing = model::closeBook(*read.book, reduced, settings.allowance);
  std::optional<std::string> refusal;
  if (options.adjust) {
    refusal =
        model::adjustBook(*read.book, reduced, closing,
                          options.anyway ? model::Adjust::Anyway : model::Adjust::WithinAllowance);
  }
  const bool adjusted = options.adjust && !refusal;
  const int printed =
      printOut(options.style == model::TableStyle::People
                   ? model::bookPage(*read.book, reduced, closing, adjusted)
                   : model::write(model::bookTable(*read.book, reduced, adjusted), options.style));
  if (!refusal) return printed;
  std::cerr << options.file << ": not adjusted: the book " << *refusal << "\n";
  return kProblems;
}

}  // namespace viewer
