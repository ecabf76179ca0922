// libFuzzer target: no bytes may crash the reader of level books, and a book that reads must work
// out and come back the same from the writer.
//
//   fuzz_book -max_total_time=30 CORPUS tests/data/bad_books
#include <cstdint>
#include <cstdlib>

#include "model/levelling/book_words.h"
#include "model/levelling/read_book.h"

namespace {

void require(bool holds) {
  if (!holds) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const model::BookSettings settings;
  const model::ReadBookResult read = model::readBook(text, "book.csv", settings);
  require(read.book.has_value() == !model::hasErrors(read.problems));
  for (const model::Problem& problem : read.problems) {
    require(!problem.what.empty() && !problem.instead.empty());
  }
  if (!read.book) return 0;
  for (auto method : {model::BookMethod::RiseAndFall, model::BookMethod::Collimation}) {
    model::ReducedBook reduced = model::reduceBook(*read.book, settings, method);
    for (const model::ArithmeticCheck& check : reduced.checks) require(check.holds());
    const auto closing = model::closeBook(*read.book, reduced, settings.allowance);
    model::adjustBook(*read.book, reduced, closing, model::Adjust::Anyway);
    require(model::knownPointTexts(*read.book, reduced).size() <= reduced.rows.size());
  }
  const std::string written = model::writeBook(*read.book);
  const model::ReadBookResult again = model::readBook(written, "book.csv", settings);
  require(again.book && again.book->bookings == read.book->bookings);
  return 0;
}
