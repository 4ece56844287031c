package dayglass.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Who may know whom. Each rule is built for a root package, so that the same rule that holds the program is shown to
 * catch a small program that breaks it.
 */
final class HouseRules {
    private static final List<String> PURE = List.of("base", "optics", "cost", "calendar");
    private static final List<String> FEATURES =
            List.of("house", "catalogue", "inventory", "job", "planning", "desk", "books");

    private static final String[] MACHINERY = {
        "java.sql..", "javax.sql..", "java.net..", "java.io..", "java.nio.file..", "java.nio.channels..",
        "java.util.logging..", "org.slf4j..", "java.util.random..", "tools.jackson..", "io.javalin..", "org.jooq.."
    };

    /** Calls that let the moment, the machine or chance into a computation. */
    private static final Set<String> IMPURE_CALLS = Set.of(
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.lang.System.getenv",
            "java.lang.System.getProperty",
            "java.lang.System.getLogger",
            "java.lang.Math.random",
            "java.util.Locale.getDefault",
            "java.util.TimeZone.getDefault",
            "java.time.ZoneId.systemDefault",
            "java.util.UUID.randomUUID",
            "java.util.Collections.shuffle");

    private static final Set<String> IMPURE_TYPES = Set.of(
            "java.time.Clock",
            "java.util.Random",
            "java.util.SplittableRandom",
            "java.util.concurrent.ThreadLocalRandom",
            "java.security.SecureRandom");

    private final String root;

    HouseRules(String root) {
        this.root = root;
    }

    ArchRule pureRoomsUseNoMachinery() {
        return noClasses()
                .that()
                .resideInAnyPackage(within(PURE))
                .should()
                .dependOnClassesThat(resideInAnyPackage(MACHINERY).or(named(IMPURE_TYPES)))
                .because("a computation sees no database, web, file, log, clock or chance");
    }

    ArchRule pureRoomsAskForNoMomentOrPlace() {
        return noClasses()
                .that()
                .resideInAnyPackage(within(PURE))
                .should()
                .accessTargetWhere(impureCall())
                .because("the same question has the same answer at any time and in any place");
    }

    ArchRule pureRoomsFormatForALocaleTheyName() {
        return noClasses()
                .that()
                .resideInAnyPackage(within(PURE))
                .should()
                .accessTargetWhere(usesDefaultLocale())
                .because("digits and letter case must not depend on the machine's language");
    }

    ArchRule baseKnowsOnlyItself() {
        return onlyKnows("base");
    }

    ArchRule costKnowsOnlyBase() {
        return onlyKnows("cost", "base");
    }

    ArchRule opticsKnowsOnlyBase() {
        return onlyKnows("optics", "base");
    }

    ArchRule wireKnowsOnlyThePureRooms() {
        return onlyKnows("wire", "base", "cost", "optics");
    }

    ArchRule webNeverSeesStorage() {
        return neverSees(List.of("web"), List.of("storage"));
    }

    ArchRule storageNeverSeesWeb() {
        return neverSees(List.of("storage"), List.of("web"));
    }

    ArchRule featuresSeeNoOutside() {
        return neverSees(FEATURES, List.of("web", "storage", "app", "shelf"));
    }

    /** The shelf's records as text are below the web and the database, which both use them. */
    ArchRule shelfSeesNeitherWebNorStorage() {
        return neverSees(List.of("shelf"), List.of("web", "storage", "app"));
    }

    ArchRule onlyPlanningKnowsTheWire() {
        return neverSees(
                FEATURES.stream().filter(feature -> !feature.equals("planning")).toList(), List.of("wire"));
    }

    ArchRule nothingSeesTheApp() {
        return neverSees(
                Stream.concat(FEATURES.stream(), Stream.of("base", "cost", "optics", "wire", "storage", "web"))
                        .toList(),
                List.of("app"));
    }

    ArchRule sqlStaysInStorage() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and(resideOutsideOfPackages(within(List.of("storage", "app"))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.jooq..", "org.sqlite..", "com.zaxxer..")
                .because("the database is behind the features' own interfaces");
    }

    ArchRule javalinStaysInTheWeb() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and(resideOutsideOfPackages(within(List.of("web", "app"))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("io.javalin..", "jakarta.servlet..", "org.eclipse.jetty..")
                .because("only the web knows that there is a server");
    }

    ArchRule fileFormatsStayInSheet() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and(resideOutsideOfPackages(within(List.of("sheet"))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.dhatim..", "de.siegmar..")
                .because("one package reads and writes tables as files");
    }

    ArchRule paperAloneKnowsHowToPrint() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and(resideOutsideOfPackages(within(List.of("paper"))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.batik..")
                .because("one package prints");
    }

    ArchRule booksWriteToStreamsNotPaths() {
        return noClasses()
                .that()
                .resideInAPackage(root + ".books..")
                .should()
                .dependOnClassesThat(named(Set.of(
                                "java.io.File",
                                "java.io.FileOutputStream",
                                "java.io.FileWriter",
                                "java.nio.file.Path",
                                "java.nio.file.Paths",
                                "java.nio.file.Files",
                                "java.time.Clock"))
                        .or(resideInAPackage("java.sql..")))
                .because("the caller owns the place and the time");
    }

    ArchRule packagesFormNoCycle() {
        return slices().matching(root + ".(**)").should().beFreeOfCycles();
    }

    ArchRule namesSayWhatAClassDoes() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .haveSimpleNameEndingWith("Manager")
                .orShould()
                .haveSimpleNameEndingWith("Helper")
                .orShould()
                .haveSimpleNameEndingWith("Util")
                .orShould()
                .haveSimpleNameEndingWith("Utils")
                .because("such a name says nothing");
    }

    ArchRule onlyTheAppPrints() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and(resideOutsideOfPackages(within(List.of("app"))))
                .should()
                .accessTargetWhere(
                        isOneOf(Set.of("java.lang.System.out", "java.lang.System.err", "java.lang.System.exit")))
                .because("standard output belongs to the command");
    }

    ArchRule nobodyPrintsStackTraces() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .accessTargetWhere(DescribedPredicate.describe(
                        "printStackTrace",
                        access -> access.getTarget().getName().equals("printStackTrace")))
                .because("people get a sentence, the log gets the trace");
    }

    /** Chance without a seed cannot be run again. */
    ArchRule chanceHasASeed() {
        return classes().that().resideInAPackage(root + "..").should(new ArchCondition<>("give each Random a seed") {
            @Override
            public void check(JavaClass owner, ConditionEvents events) {
                owner.getConstructorCallsFromSelf().stream()
                        .filter(call -> call.getTargetOwner().isEquivalentTo(java.util.Random.class))
                        .filter(call -> call.getTarget().getRawParameterTypes().isEmpty())
                        .forEach(call -> events.add(SimpleConditionEvent.violated(call, call.getDescription())));
            }
        });
    }

    ArchRule adaptersServeAFeature() {
        return classes()
                .that()
                .resideInAPackage(root + ".storage..")
                .and()
                .haveSimpleNameStartingWith("Jooq")
                .should()
                .beAssignableTo(resideInAnyPackage(within(FEATURES)))
                .because("the interface of a repository lies in the feature that needs it");
    }

    private ArchRule onlyKnows(String room, String... known) {
        List<String> allowed = new ArrayList<>(List.of(known));
        allowed.add(room);
        return noClasses()
                .that()
                .resideInAPackage(root + "." + room + "..")
                .should()
                .dependOnClassesThat(resideInAPackage(root + "..").and(resideOutsideOfPackages(within(allowed))))
                .as(room + " should know no other room than " + allowed);
    }

    private ArchRule neverSees(List<String> seeing, List<String> unseen) {
        return noClasses()
                .that()
                .resideInAnyPackage(within(seeing))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(within(unseen));
    }

    private String[] within(List<String> rooms) {
        return rooms.stream().map(room -> root + "." + room + "..").toArray(String[]::new);
    }

    private static DescribedPredicate<JavaClass> named(Set<String> names) {
        return DescribedPredicate.describe("one of " + names, type -> names.contains(type.getName()));
    }

    private static DescribedPredicate<JavaAccess<?>> impureCall() {
        return DescribedPredicate.describe("the moment, the machine or chance", access -> {
            String owner = access.getTargetOwner().getName();
            String name = access.getTarget().getName();
            boolean now = owner.startsWith("java.time.") && name.equals("now");
            return now || IMPURE_CALLS.contains(owner + "." + name);
        });
    }

    private static DescribedPredicate<JavaAccess<?>> usesDefaultLocale() {
        return DescribedPredicate.describe("the default locale", access -> {
            String call =
                    access.getTargetOwner().getName() + "." + access.getTarget().getName();
            List<String> parameters = access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget target
                    ? target.getRawParameterTypes().stream()
                            .map(JavaClass::getName)
                            .toList()
                    : List.of();
            boolean caseChange =
                    call.equals("java.lang.String.toLowerCase") || call.equals("java.lang.String.toUpperCase");
            boolean format = call.equals("java.lang.String.format") || call.equals("java.lang.String.formatted");
            boolean pattern = call.equals("java.time.format.DateTimeFormatter.ofPattern");
            return (caseChange || format || pattern) && !parameters.contains("java.util.Locale");
        });
    }

    private static DescribedPredicate<JavaAccess<?>> isOneOf(Set<String> targets) {
        return DescribedPredicate.describe(
                "one of " + targets,
                access -> targets.contains(access.getTargetOwner().getName() + "."
                        + access.getTarget().getName()));
    }
}
