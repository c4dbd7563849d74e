// expect: the_rule_that_is_broken
int right = 0;
