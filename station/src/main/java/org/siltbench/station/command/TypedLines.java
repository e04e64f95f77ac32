package org.siltbench.station.command;

/** Takes those lines of standard input that are not the balance's; from one thread of its own. */
public interface TypedLines {

  /** Nobody else reads standard input. */
  TypedLines NONE =
      new TypedLines() {
        @Override
        public boolean takes(String line) {
          return false;
        }

        @Override
        public void end() {}
      };

  /** True if this line is not the balance's, and has been taken. */
  boolean takes(String line);

  /** Standard input has ended. */
  void end();
}
