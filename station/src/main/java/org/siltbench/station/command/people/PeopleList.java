package org.siltbench.station.command.people;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Person;

/** {@code people list}. */
final class PeopleList implements Task {

  @Override
  public int run(Session session) {
    People people = session.people();
    List<Object> list = new ArrayList<>();
    for (Person person : people.all()) {
      Map<String, Object> item = new LinkedHashMap<>();
      item.put("initials", person.initials());
      item.put("right", person.right().code());
      list.add(item);
      session.fact(person.initials() + "  " + person.right().code());
    }
    session.document(Map.of("open", people.isOpen(), "people", list));
    if (people.isOpen()) {
      session.message("The lab is open: everybody may do everything until there is a supervisor.");
    }
    return 0;
  }
}
