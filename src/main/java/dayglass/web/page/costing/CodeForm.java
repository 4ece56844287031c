package dayglass.web.page.costing;

import dayglass.base.Fault;
import dayglass.base.Stored;
import dayglass.books.CostCodes;
import dayglass.books.JobCodes;
import dayglass.job.Job;
import dayglass.planning.KeptCosting;
import dayglass.web.page.form.Form;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The form of cost codes: a field an option, named by its id. */
final class CodeForm {
    /** Before the id of the option in the name of its field. */
    private static final String CODE = "code/";

    private CodeForm() {}

    /** The codes that are kept, to be changed. */
    static Form of(Stored<Job.Id, JobCodes> kept) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("version", String.valueOf(kept.version()));
        kept.facts().codes().byOption().forEach((option, code) -> values.put(CODE + option, code));
        return new Form(values, List.of(), "");
    }

    /** The codes typed. */
    static CostCodes codes(Form form) {
        Map<String, String> codes = new LinkedHashMap<>();
        form.values().forEach((name, value) -> {
            if (name.startsWith(CODE)) {
                codes.put(name.substring(CODE.length()), value);
            }
        });
        return new CostCodes(codes);
    }

    /** What is wrong with the codes typed, each at its field. */
    static List<Fault> faults(Form form, KeptCosting costing) {
        return codes(form).faults(costing.question(), "").stream()
                .map(fault -> new Fault(
                        CODE + fault.pointer().substring(1).replace("~1", "/").replace("~0", "~"), fault.message()))
                .toList();
    }
}
