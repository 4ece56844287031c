package dayglass.web.page.ways;

import dayglass.job.Brief;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A brief in a few phrases. */
final class BriefWords {
    private BriefWords() {}

    static List<String> of(Brief brief) {
        List<String> facts = new ArrayList<>();
        Brief.Picture picture = brief.picture();
        facts.add("sensor " + picture.camera().width().toPlainString() + " × "
                + picture.camera().height().toPlainString() + " mm, mount "
                + picture.camera().mount());
        facts.add("delivered " + picture.aspect().toPlainString() + " : 1");
        brief.squeeze().ifPresent(squeeze -> facts.add("wanted squeeze " + squeeze.toPlainString()));
        picture.light().lux().ifPresent(lux -> facts.add("darkest scene " + lux.toPlainString() + " lux"));
        picture.set()
                .closestSubjectM()
                .ifPresent(metres -> facts.add("nearest subject " + metres.toPlainString() + " m"));
        if (!brief.looks().isEmpty()) {
            facts.add("looks: "
                    + brief.looks().entrySet().stream()
                            .sorted(Map.Entry.comparingByKey())
                            .map(each -> each.getKey().word() + " "
                                    + each.getValue().grade() + " (weight "
                                    + each.getValue().weight().toPlainString() + ")")
                            .collect(Collectors.joining(", ")));
        }
        brief.budget().ifPresent(budget -> facts.add("budget " + Words.money(budget)));
        facts.add("a lens may be " + brief.tolerance().value().toPlainString() + " % off its slot's focal length");
        return facts;
    }
}
