#include "model/asbuilt/reading_summary.h"

#include <algorithm>
#include <cmath>

#include "model/asbuilt/words.h"

namespace model {

namespace {

// Of what is allowed that way; with nothing allowed, behind any that has some.
double shareOf(const Deviation& d) {
  const double limit = d.off > 0 ? d.allowed.over : d.allowed.under;
  return limit > 1e-9 ? std::abs(d.off) / limit : 1e6 + std::abs(d.off);
}

}  // namespace

ReadingCount countReadings(const AsBuilt& built, std::optional<size_t> set) {
  ReadingCount count;
  for (const Deviation& d : built.deviations) {
    if (set && d.set != *set) continue;
    if (!d.latest)
      ++count.readAgain;
    else if (d.verdict == Verdict::Within)
      ++count.within;
    else
      ++(d.verdict == Verdict::AtTheEdge ? count.atTheEdge : count.out);
  }
  for (const Unheld& unheld : built.unheld) count.unheld += !set || unheld.set == *set;
  return count;
}

std::vector<size_t> mostOff(const AsBuilt& built, size_t most) {
  std::vector<size_t> found;
  for (size_t i = 0; i < built.deviations.size(); ++i) {
    const Deviation& d = built.deviations[i];
    if (d.latest && d.verdict != Verdict::Within) found.push_back(i);
  }
  std::stable_sort(found.begin(), found.end(), [&](size_t a, size_t b) {
    const Deviation &one = built.deviations[a], &other = built.deviations[b];
    if (one.verdict != other.verdict) return one.verdict == Verdict::Out;
    return shareOf(one) > shareOf(other);
  });
  if (found.size() > most) found.resize(most);
  return found;
}

size_t readingNumber(const Job& job, size_t set, size_t row) {
  size_t number = row + 1;
  for (size_t i = 0; i < set; ++i) number += job.readings[i].rows.size();
  return number;
}

std::string targetWords(const Deviation& d) {
  // Deviation::what is "TARGET, PLACE", or "side PLACE of the TARGET".
  const std::string place = d.place.between ? " " + d.place.words : ", " + d.place.words;
  std::string words = d.what;
  const size_t at = d.place.between ? words.find(place) : words.rfind(place);
  return at == std::string::npos ? words : words.erase(at, place.size());
}

std::string signedMillimetres(double metres) {
  const std::string text = millimetres(metres);
  if (text == "0" || text == "-0" || text == "-0.0") return "0";
  return text[0] == '-' ? text : "+" + text;
}

}  // namespace model
