package padside.safety;

/** What every rule is held with: the code, the house rules, and how to write quantities. */
record Basis(RuleSet code, HouseRules house, Shown shown) {}
