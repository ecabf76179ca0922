#include "viewer/commands/book_command.h"

#include <cmath>
#include <iostream>

#include "model/exchange/book_table.h"
#include "model/job/read_job.h"
#include "model/levelling/book_words.h"
#include "model/levelling/read_book.h"
#include "model/levelling/set_up.h"
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

// What the job knows; false, with what is wrong printed, when it cannot be used.
bool takeMarks(const std::string& path, model::BookSettings& settings) {
  if (path.empty()) return true;
  const model::ReadResult read = model::readJobFile(path);
  if (!read.job || model::hasErrors(read.problems)) {
    printProblems(read.problems);
    return false;
  }
  settings.marks = model::marksOf(*read.job);
  settings.ordnanceDatum = read.job->ordnanceDatum;
  if (!settings.marks.empty()) return true;
  printAbout(path, model::Problem{"",
                                  {},
                                  model::Severity::Error,
                                  "the job has no bench mark to take a level from",
                                  "add [site.bench_mark] with its name, at and level"});
  return false;
}

}  // namespace

int runBook(const BookCommand& options) {
  if (auto wrong = wrongNumber(options)) return wrongUsage(*wrong);
  model::BookSettings settings;
  settings.start = options.start;
  settings.close = options.close;
  settings.staff = options.staff.value_or(settings.staff);
  if (options.allow) settings.allowance.perSetUp = *options.allow / 1000;
  if (!takeMarks(options.job, settings)) return kProblems;
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
  std::string text;
  if (options.style == model::TableStyle::People) {
    text = model::bookPage(*read.book, reduced, closing, adjusted);
    if (!options.job.empty()) text += model::marksText(*read.book, settings.marks) + ".\n";
  } else {
    text = model::write(model::bookTable(*read.book, reduced, adjusted), options.style);
  }
  const int printed = printOut(text);
  if (!refusal) return printed;
  std::cerr << options.file << ": not adjusted: the book " << *refusal << "\n";
  return kProblems;
}

}  // namespace viewer
