// expect: the_rule_that_is_broken
#ifdef CONTROL
int right = 0;
#else
int wrong = the_rule_that_is_broken;
#endif
