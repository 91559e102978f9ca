package wainbook.process;

import java.util.Optional;

/**
 * A place where a stage is done.
 *
 * @param stage absent for a place off the line: a bay, the yard
 */
public record Station(String code, Optional<String> stage, String title) {

    public Station {
        Code.checked("a station", code);
        stage.ifPresent(name -> Code.checked("a stage", name));
        Code.titled("a station", title);
    }
}
