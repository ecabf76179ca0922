// For things that are wholly there: nothing is asked of the clock, so depth can be tested early.
#define STILL
