#include "model/job/reading_points.h"

#include <algorithm>
#include <string_view>

#include <glm/geometric.hpp>

#include "model/job/job_names.h"

namespace model {

namespace {

constexpr const char* kLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

}  // namespace

ReadingPoints::ReadingPoints(const Job& job) : job_(job) {
  const size_t corners = job.outline.size();
  for (size_t i = 0; i < corners; ++i) {
    letters_.push_back(letterOfCorner(i));
    walls_.push_back(nameOfWall(i, corners));
  }
  for (const Opening& opening : job.openings) openings_.push_back(opening.name);
}

std::optional<size_t> ReadingPoints::corner(const std::string& name) const {
  const auto found = std::find(letters_.begin(), letters_.end(), name);
  if (found == letters_.end()) return std::nullopt;
  return static_cast<size_t>(found - letters_.begin());
}

std::optional<size_t> ReadingPoints::wall(const std::string& name) const {
  const auto two = twoCorners(name);
  if (!two || !neighbours(*two)) return std::nullopt;
  return (two->first + 1) % corners() == two->second ? two->first : two->second;
}

bool ReadingPoints::opening(const std::string& name) const {
  return !name.empty() && std::find(openings_.begin(), openings_.end(), name) != openings_.end();
}

std::optional<std::pair<size_t, size_t>> ReadingPoints::twoCorners(const std::string& name) const {
  const size_t hyphen = name.find('-');
  if (hyphen == std::string::npos) return std::nullopt;
  const auto first = corner(name.substr(0, hyphen)), second = corner(name.substr(hyphen + 1));
  if (!first || !second || *first == *second) return std::nullopt;
  return std::pair{*first, *second};
}

bool ReadingPoints::neighbours(const std::pair<size_t, size_t>& two) const {
  return (two.first + 1) % corners() == two.second || (two.second + 1) % corners() == two.first;
}

double ReadingPoints::wallLength(size_t wall) const {
  return distance({wall, (wall + 1) % corners()});
}

double ReadingPoints::distance(const std::pair<size_t, size_t>& two) const {
  return glm::distance(job_.outline[two.first], job_.outline[two.second]);
}

std::optional<PinWord> pinOf(const std::string& at) {
  static constexpr std::string_view kWord = "pin ", kCellar = "K-";
  if (!at.starts_with(kWord)) return std::nullopt;
  PinWord pin{at.substr(kWord.size()), TargetPlace::Pins};
  std::string_view rest = pin.name;
  if (rest.starts_with(kCellar)) {
    pin.place = TargetPlace::CellarPins;
    rest.remove_prefix(kCellar.size());
  }
  const size_t letters = std::min(rest.size(), rest.find_first_not_of(kLetters));
  if (letters > 0 && pin.place == TargetPlace::Pins) pin.place = TargetPlace::SlabPins;
  const bool lettered = pin.place != TargetPlace::Pins;
  const std::string_view digits = rest.substr(letters);
  if (lettered != (letters > 0) || digits.empty() || digits.size() > 5 || digits[0] == '0' ||
      digits.find_first_not_of("0123456789") != std::string_view::npos)
    return std::nullopt;
  return pin;
}

}  // namespace model
