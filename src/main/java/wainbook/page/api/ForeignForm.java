package wainbook.page.api;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import wainbook.page.Pages;
import wainbook.page.Trouble;
import wainbook.page.Trouble.Kind;

/** A form whose token is not this browser's is turned away before any resource sees it, with a bare 400: here it gets its words. */
class ForeignForm {

    @ServerResponseFilter
    void say(ContainerRequestContext request, ContainerResponseContext response) {
        if (request.getMethod().equals("POST")
                && response.getStatus() == 400
                && !response.hasEntity()
                && !request.getUriInfo().getPath().startsWith("/api/")) {
            response.setEntity(Pages.problem(Trouble.of(Kind.FOREIGN)).render(), null, MediaType.TEXT_HTML_TYPE);
        }
    }
}
