// expect: the_rule_that_is_broken
#ifdef CONTROL
int right = 0;
#else
int wrong = some_slip_of_the_pen;
#endif
