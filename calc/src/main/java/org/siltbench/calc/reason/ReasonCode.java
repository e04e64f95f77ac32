package org.siltbench.calc.reason;

/**
 * Names a reason. A room that gives reasons has enums of these, each with its English sentence;
 * sentences in other languages stand with whoever shows them. A constant's name is the stable code.
 */
public interface ReasonCode {

  /** The constant's name. */
  String name();

  /** The enum it stands in. */
  Class<?> getDeclaringClass();

  /** The English sentence, with gaps {0}, {1}, …. */
  String english();

  /** This reason with its gaps filled. */
  default Reason with(Object... gaps) {
    return new Reason(this, java.util.List.of(gaps));
  }
}
