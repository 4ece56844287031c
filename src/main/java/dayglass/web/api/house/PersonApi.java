package dayglass.web.api.house;

import dayglass.house.People;
import dayglass.house.Person;
import dayglass.house.Role;
import dayglass.web.api.Representation;
import dayglass.web.api.Resource;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** {@code /api/people}. */
public final class PersonApi {
    private PersonApi() {}

    public static Resource<Person.Id, Person> of(People people) {
        return new Resource<>(
                new Representation<>("/api/people", "person", people, Person.Id::new, reader(), PersonApi::write));
    }

    public static Reader<Person> reader() {
        return Fields.object(PersonApi::read);
    }

    private static Read<Person> read(Fields fields) {
        Map<String, Role> roles = new LinkedHashMap<>();
        Arrays.stream(Role.values()).forEach(role -> roles.put(role.word(), role));
        Read<String> name = fields.required("name", Readers.name());
        Read<Role> role = fields.required("role", Readers.word(roles));
        Read<Boolean> gone = fields.optional("gone", Readers.yesOrNo(), false);
        return fields.build(() -> new Person(name.get(), role.get(), gone.get()));
    }

    private static void write(Json.Members members, Person person) {
        members.put("name", person.name()).put("role", person.role().word()).put("gone", person.gone());
    }
}
