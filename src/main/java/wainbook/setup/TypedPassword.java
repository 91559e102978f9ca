package wainbook.setup;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A password at the command line: typed unseen at a terminal, or the next line of what is piped in. */
@ApplicationScoped
class TypedPassword {

    private BufferedReader lines;

    // On a later Java there is always a console; one that is no terminal then reads what is piped in, as wanted.
    @SuppressWarnings("SystemConsoleNull")
    synchronized String typed(String prompt) {
        Console console = System.console();
        if (console != null) {
            char[] typed = console.readPassword("%s ", prompt);
            return typed == null ? "" : new String(typed);
        }
        try {
            if (lines == null) {
                lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            }
            String line = lines.readLine();
            return line == null ? "" : line;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
