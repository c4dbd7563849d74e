// expect: the_rule_that_is_broken
int wrong = the_rule_that_is_broken;
