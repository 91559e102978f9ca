package wainbook.page.api;

import jakarta.ws.rs.core.Response;
import java.net.URI;

/** After a form was taken, the browser is sent to a page that can be loaded again without sending the form again. */
public final class Redirect {

    private Redirect() {}

    public static Response to(String path) {
        return Response.seeOther(URI.create(path)).build();
    }
}
