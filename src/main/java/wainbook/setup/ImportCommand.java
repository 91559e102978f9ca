package wainbook.setup;

import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wainbook.act.Reason;
import wainbook.page.Words;
import wainbook.process.VehicleFacts;
import wainbook.setup.files.Fault;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksFolder;
import wainbook.setup.taking.Asker;
import wainbook.setup.taking.Preview;
import wainbook.setup.taking.Taking;
import wainbook.setup.taking.ToTake;
import wainbook.setup.taking.page.ChangeInWords;

/**
 * Reads a folder and tells its faults, or what taking it would change; takes it when told to. Exit code 0 when there is
 * nothing to do or it was taken, 3 for faults or a refusal, 4 for changes that were not taken.
 */
@Command(name = "import", mixinStandardHelpOptions = true)
public class ImportCommand implements Callable<Integer> {

    static final int REFUSED = 3;
    static final int NOT_TAKEN = 4;

    @Parameters(paramLabel = "FOLDER")
    Path folder;

    @Option(names = "--take")
    boolean take;

    @Option(names = "--second", paramLabel = "USER")
    Optional<String> second = Optional.empty();

    @Inject
    Taking taking;

    @Inject
    Clock clock;

    @Inject
    TypedPassword passwords;

    @Spec
    CommandSpec spec;

    @Override
    @ActivateRequestContext
    public Integer call() {
        return WorksFolder.read(folder, VehicleFacts.PREDICATES).fold(this::whole, this::faulty);
    }

    private int faulty(List<Fault> faults) {
        faults.stream().map(Fault::text).forEach(out()::println);
        out().println(Words.of("setup.faultCount", faults.size()));
        return REFUSED;
    }

    private int whole(WorksFiles files) {
        Asker asker = Asker.setup(clock);
        Preview preview = taking.preview(files, asker);
        preview.differences().changes().stream().map(ChangeInWords::line).forEach(out()::println);
        out().println(Words.of(
                "setup.changeCount", preview.differences().written().size()));
        if (preview.differences().nothing()) {
            return 0;
        }
        if (!take) {
            return refused(preview.reasons(), NOT_TAKEN);
        }
        Optional<ToTake.Second> confirming =
                second.map(user -> new ToTake.Second(user, passwords.typed(Words.of("setup.passwordOf", user))));
        return taking.take(new ToTake(UUID.randomUUID(), files, preview.fingerprint(), confirming), asker)
                .fold(entry -> taken(), reasons -> refused(reasons, REFUSED));
    }

    private int taken() {
        out().println(Words.of("setup.taken"));
        return 0;
    }

    private int refused(List<Reason> reasons, int code) {
        reasons.forEach(reason ->
                out().println(Words.of(reason.key(), reason.arguments().toArray())));
        return code;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
