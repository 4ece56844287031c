package dayglass.support;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a server answered. */
public record Reply(int status, Map<String, List<String>> headers, String text) {
    public Optional<String> header(String name) {
        return headers.entrySet().stream()
                .filter(header -> header.getKey().equalsIgnoreCase(name))
                .map(header -> header.getValue().get(0))
                .findFirst();
    }

    public String etag() {
        return header("ETag").orElseThrow();
    }

    public JsonNode json() {
        return JsonMapper.shared().readTree(text);
    }

    public long id() {
        return json().get("id").asLong();
    }

    /** The name at the end of a problem's type. */
    public String kind() {
        return json().get("type").asString().replace("urn:dayglass:problem:", "");
    }
}
