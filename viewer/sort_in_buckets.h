// Sorting in linear time what is spread evenly.
#pragma once

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace viewer {

// Brings items of one bucket together and puts each bucket in order: linear where keys are spread
// evenly, as hashes and lines are. `buckets` is a power of two.
//
// Done at one go, every item of an estate would be put where nothing near it is in the caches. So
// the items are first shared out to parts small enough for the caches, then put in order part by
// part.
template <typename T, typename Bucket, typename Less>
void sortInBuckets(std::vector<T>& items, size_t buckets, Bucket bucketOf, Less less) {
  constexpr size_t kInPart = size_t(1) << 15;
  const size_t inPart = std::min(buckets, kInPart), parts = buckets / inPart;
  std::vector<T> other(items.size());
  // Items of one part from `from`, by `slotOf`, to the same places of `to`; returns the slots'
  // ends.
  std::vector<size_t> ends;
  const auto share = [&ends](const T* from, T* to, size_t count, size_t slots, auto slotOf) {
    ends.assign(slots + 1, 0);
    for (size_t i = 0; i < count; ++i) ++ends[slotOf(from[i]) + 1];
    for (size_t i = 0; i < slots; ++i) ends[i + 1] += ends[i];
    for (size_t i = 0; i < count; ++i) to[ends[slotOf(from[i])]++] = from[i];
    ends.pop_back();
  };
  std::vector<size_t> partEnds{items.size()};
  if (parts > 1) {
    share(items.data(), other.data(), items.size(), parts,
          [&](const T& item) { return bucketOf(item) / inPart; });
    partEnds = ends;
    std::swap(items, other);
  }
  size_t begin = 0;
  for (const size_t end : partEnds) {
    T* const sorted = other.data() + begin;
    share(items.data() + begin, sorted, end - begin, inPart,
          [&](const T& item) { return bucketOf(item) & (inPart - 1); });
    size_t first = 0;
    for (const size_t last : ends) {
      if (last - first > 1) std::sort(sorted + first, sorted + last, less);
      first = last;
    }
    begin = end;
  }
  std::swap(items, other);
}

}  // namespace viewer
