package dayglass.web;

import jakarta.servlet.Filter;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.io.IOException;

/**
 * Lets every handler of GET answer HEAD too, so that both say the same; the server below knows the method that was sent
 * and leaves the body out. Without it the library answers HEAD by itself, and says 200 of things that do not exist.
 */
final class HeadAsGet implements Filter {
    @Override
    public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        boolean head =
                request instanceof HttpServletRequest http && http.getMethod().equals("HEAD");
        chain.doFilter(head ? new AsGet((HttpServletRequest) request) : request, response);
    }

    private static final class AsGet extends HttpServletRequestWrapper {
        AsGet(HttpServletRequest head) {
            super(head);
        }

        @Override
        public String getMethod() {
            return "GET";
        }
    }
}
