package wainbook.works.signin;

import java.util.List;
import java.util.Optional;
import wainbook.page.Form;

/**
 * A person's tokens as their page shows them.
 *
 * @param userName what goes with a token; absent for whoever has none
 * @param made the one that was made just now, readable this once
 */
public record TokensView(Optional<String> userName, List<TokenRow> tokens, Form form, Optional<Made> made) {

    /** A token in full. */
    public record Made(String title, String token) {}
}
