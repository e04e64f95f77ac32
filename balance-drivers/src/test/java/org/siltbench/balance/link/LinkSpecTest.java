package org.siltbench.balance.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.siltbench.balance.link.LineSettings.Parity;
import org.siltbench.balance.link.LineSettings.Stop;

class LinkSpecTest {

  @Test
  void aBareSerialPortHasTheUsualLineSettings() {
    LinkSpec.Serial spec = (LinkSpec.Serial) LinkSpec.parse("serial:/dev/ttyUSB0");
    assertEquals("/dev/ttyUSB0", spec.port());
    assertEquals(LineSettings.DEFAULT, spec.line());
    assertEquals(SpecOptions.NONE, spec.options());
  }

  @Test
  void everyKeyIsTaken() {
    LinkSpec.Serial spec =
        (LinkSpec.Serial)
            LinkSpec.parse(
                "serial:COM3?baud=2400&bits=7&parity=even&stop=2&format=heron&unit=mg"
                    + "&ask=P%0D%0A&every=2s");
    assertEquals(new LineSettings(2400, 7, Parity.EVEN, Stop.TWO), spec.line());
    assertEquals(
        new SpecOptions("heron", "mg", "P\r\n", Duration.ofSeconds(2), null), spec.options());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "serial:/dev/ttyUSB0",
        "serial:/dev/ttyUSB0?baud=1200&bits=7&parity=odd&stop=1.5&ask=%1BP%25+%26%0D",
        "tcp:balance.lab:4001?rfc2217=yes&baud=19200&unit=g",
        "tcp:[::1]:4001",
        "replay:/tmp/a%20b%3F.txt?speed=2.0",
        "practice",
        "practice?seed=7&every=100ms&speed=60.0",
      })
  void whatIsPrintedIsWhatWasRead(String text) {
    assertEquals(text, LinkSpec.parse(text).toString());
    assertEquals(LinkSpec.parse(text), LinkSpec.parse(LinkSpec.parse(text).toString()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "usb:/dev/x | unknown balance",
        "serial: | after the colon comes a port",
        "serial:/dev/x?baud=fast | baud must be a whole number",
        "serial:/dev/x?baud=3 | baud must be 50 to 4000000",
        "serial:/dev/x?parity=maybe | none, odd, even, mark, space",
        "serial:/dev/x?speed=2 | serial has no key speed",
        "serial:/dev/x?colour=red | has no key colour",
        "serial:/dev/x?baud=9600&baud=2400 | twice",
        "serial:/dev/x?baud | KEY=VALUE",
        "serial:/dev/x?ask=%ZZ | %25",
        "serial:/dev/x?every=soon | 500ms",
        "serial:/dev/x?every=1ms | 20ms",
        "tcp:host | a host and a port",
        "tcp:host:99999 | 1 to 65535",
        "tcp:host:1?baud=9600 | tcp has no key baud",
        "tcp:host:1?rfc2217=true | yes or no",
        "practice:7 | practice?seed=7",
        "practice?seed=x | seed must be a whole number",
        "replay:f?speed=-1 | speed must be above 0",
      })
  void aTextThatCannotBeReadSaysWhy(String text, String expected) {
    Exception e = assertThrows(IllegalArgumentException.class, () -> LinkSpec.parse(text));
    assertTrue(e.getMessage().contains(expected), e.getMessage());
  }
}
