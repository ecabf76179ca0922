// When each stage of a film is on: a wall rises course by course, a dig goes down bench by bench,
// and the work of a week takes longer than that of an hour.
#pragma once

#include <cstddef>
#include <vector>

namespace viewer {

class FilmPace {
 public:
  // Stages `first` and on of the programme, one for each of `days`, its working days; a film of
  // `length` seconds. Each stage has its share by its days, but a quarter of the mean at least and
  // four times that at most: else short ones could not be read and long ones would be all there is.
  FilmPace(const std::vector<double>& days, size_t first, double length);

  // The programme's clock after so many seconds. The last tenth, two seconds at most, rests on the
  // end.
  double at(double second) const;
  // Of each stage.
  const std::vector<double>& seconds() const { return seconds_; }
  double length() const { return length_; }

 private:
  std::vector<double> seconds_;
  double first_, length_;
};

}  // namespace viewer
