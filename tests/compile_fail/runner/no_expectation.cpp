int wrong = the_rule_that_is_broken;
