#include "viewer/sort_in_buckets.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cstdint>

namespace {

struct Item {
  std::uint32_t bucket, value;
  bool operator==(const Item&) const = default;
};

// 2^17 buckets are more than one part.
RC_GTEST_PROP(SortInBuckets, DoesWhatSortingByBucketAndThenByValueDoes, ()) {
  const std::uint32_t buckets = *rc::gen::element(1u, 64u, 1u << 17);
  std::vector<Item> items = *rc::gen::container<std::vector<Item>>(
      rc::gen::build<Item>(rc::gen::set(&Item::bucket, rc::gen::inRange(0u, buckets)),
                           rc::gen::set(&Item::value, rc::gen::inRange(0u, 9u))));
  std::vector<Item> expected = items;
  std::sort(expected.begin(), expected.end(), [](const Item& a, const Item& b) {
    return a.bucket != b.bucket ? a.bucket < b.bucket : a.value < b.value;
  });
  viewer::sortInBuckets(
      items, buckets, [](const Item& item) { return item.bucket; },
      [](const Item& a, const Item& b) { return a.value < b.value; });
  RC_ASSERT(items == expected);
}

}  // namespace
