package org.siltbench.balance;

import org.siltbench.calc.reason.ReasonCode;

/** What links, recordings and saved line formats can say. */
public enum BalanceSays implements ReasonCode {
  ANOTHER_FILE("Choose another file."),
  CORRECT_LINE("Correct that line."),
  FORMAT_LARGE("{0} is too large for a line format."),
  FORMAT_NOT_TEXT("{0} is not UTF-8 text."),
  FORMAT_LINE("{0}, {1}."),
  NO_FORMAT("There is no line format \"{0}\"."),
  NONE_SAVED("None is saved yet; learn one with `balance learn`, or give a file's path."),
  SAVED_ARE("Saved are {0}; or give a file's path."),
  TYPED_NO_PORT("A balance that types has no port to listen to."),
  LET_IT_TYPE("Let it type into this program."),
  NO_PORT_CONTROL("The far end does not answer port control (RFC 2217)."),
  PORT_CONTROL_REFUSED("The far end refuses port control (RFC 2217)."),
  SET_INSTEAD("The far end set {0} to {1} instead."),
  SET_ON_BOX("Set the line on the network box itself and leave rfc2217 out."),
  CANNOT_READ("Cannot read {0}."),
  CHECK_FILE_NAME("Check the name of the file."),
  LARGER("{0} is larger than {1} MiB."),
  SHORTER_FILE("Replay a shorter file."),
  NO_MACHINE("No machine is called {0}."),
  CHECK_MACHINE("Check the name, or use the address."),
  NOT_REACHED("Cannot reach {0}:{1} ({2})."),
  CHECK_NETWORK("Check that the balance is on and its network cable is in."),
  OTHER_DEVICE("{0} is now another device than before."),
  PLUG_AGAIN("Plug the balance in again."),
  NO_PORT("There is no port {0}."),
  CHECK_PORT("Check the cable and the name; `balance find` lists the ports there are."),
  NO_PERMISSION("Cannot open {0}: no permission."),
  ASK_ACCESS("Ask for access to the port (on Debian: the group dialout), then log in again."),
  NOT_OPENED("Cannot open {0}."),
  CHECK_USE("Check that no other program uses it and that the cable is in."),
  IN_USE("{0} is in use by {1}."),
  ANOTHER_PROGRAM("another program"),
  CLOSE_OTHER("Close the other program, or choose another port."),
  GONE("{0} is gone."),
  CLOSED("{0} was closed."),
  CABLE_OUT("The cable of {0} is out or the balance is off."),
  NOT_SENT("Cannot send to {0}."),
  FAR_END_CLOSED("The other end closed the connection."),
  RECORDING_TAKES_NOTHING("A recording takes no bytes."),
  PRACTICE_TALKS("The practice balance in this process talks by itself."),
  PRACTICE_LOST("The practice balance's bytes did not arrive."),
  INTERRUPTED("interrupted"),
  CLOSING_FAILED("{0} Closing it failed too: {1}"),
  NO_MORE_LINES("no more lines"),
  SOURCE_CLOSED("the source was closed"),
  INPUT_ENDED("the input has ended"),
  RECORD_AGAIN("Record it again, or check where the file comes from."),
  RECORDING_LINE("{0}, line {1}: {2}."),
  FIRST_LINE("the first line must be \"{0}\""),
  EXPECTED("expected {0}"),
  NO_YEAR("no year of a recording"),
  NO_TIME("no time: {0}"),
  TIME_BACK("time goes back or is absurd"),
  NO_TIME_AND_TEXT("no time and quoted text: {0}"),
  NO_SOCAT("Cannot make a pseudo-terminal: socat is missing."),
  INSTALL_OR_MEMORY(
      "Install socat (apt-get install socat), or let the practice balance stay in memory."),
  INSTALL_OR_TCP("Install socat (apt-get install socat), or serve a TCP port."),
  NO_PTY("No pseudo-terminal came to be at {0}."),
  CHECK_FOLDER("Check that the folder can be written."),
  LINK_IS_FILE("{0} is a file already."),
  ANOTHER_LINK("Name a link that is not there."),
  WITH_WAY_OUT("{0} {1}"),
  AS_TOLD("{0}"),
  BENCH_BUSY("the bench was busy for too long"),
  LONG_LINE("a line of more than {0} characters"),
  HALF_LINE("the first line may be half a line: send it once more");

  private final String english;

  BalanceSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
