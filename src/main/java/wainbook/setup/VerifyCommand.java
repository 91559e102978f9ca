package wainbook.setup;

import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import wainbook.ledger.verification.VerificationReport;
import wainbook.ledger.verification.Verify;
import wainbook.page.Words;
import wainbook.page.ledger.Found;

/** Verifies the whole ledger. Exit code 0 when sound, 3 when something was found. */
@Command(name = "verify", mixinStandardHelpOptions = true)
public class VerifyCommand implements Callable<Integer> {

    static final int FOUND = 3;

    @Inject
    Verify verify;

    @Spec
    CommandSpec spec;

    @Override
    @ActivateRequestContext
    public Integer call() {
        VerificationReport report = verify.everything();
        PrintWriter out = spec.commandLine().getOut();
        report.findings().stream().map(Found::of).forEach(found -> out.println(found.where() + ": " + found.what()));
        out.println(Words.of(
                report.sound() ? "ledger.sound" : "ledger.unsound",
                report.streams(),
                report.entries(),
                report.files(),
                report.findings().size()));
        return report.sound() ? 0 : FOUND;
    }
}
