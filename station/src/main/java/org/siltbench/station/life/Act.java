package org.siltbench.station.life;

/** What can be done with a filter. The words are those of the drawn table. */
public enum Act {
  PRE_DRY("pre-dry", "wash and dry before the first mass"),
  PRE_WEIGH("pre-weigh", "weigh the clean filter"),
  REPEAT("repeat", "weigh again for repeatability"),
  AUDIT("audit", "weigh out of the sealed bag before the trip"),
  LABEL("label", "print the bag label"),
  CLOSE_BAG("close bag", "scan the bag closed"),
  ISSUE("issue", "give out to a trip"),
  RETURN("return", "take back unused"),
  MISS("missing", "note that the bag has not come back"),
  RECEIVE("receive", "take in with its field notes"),
  DRY("dry", "put into the oven"),
  END_DRY("end drying", "take out of the oven into the desiccator"),
  POST_WEIGH("post-weigh", "weigh the loaded filter"),
  PROVE("prove constant", "the method's rule is met"),
  IGNITE("ignite", "burn off the volatile solids"),
  HOLD("hold", "keep its result back"),
  RELEASE("release", "report its result"),
  REJECT("reject", "take it out, with a reason");

  private final String code;
  private final String meaning;

  Act(String code, String meaning) {
    this.code = code;
    this.meaning = meaning;
  }

  /** The word used in tables and messages. */
  public String code() {
    return code;
  }

  /** What a person does, in a few words. */
  public String meaning() {
    return meaning;
  }
}
