package trialwood.web;

import java.util.List;

/**
 * Who looks at the page, as the layout shows it.
 *
 * @param nursery name of the nursery
 * @param account its user name
 * @param role the role as a word
 * @param initials of the account's person; the user name of an account without one
 * @param places the pages this role may open
 */
public record Viewer(
    String nursery, String account, String role, String initials, List<Link> places) {

  /**
   * A page in the navigation.
   *
   * @param key what the page calls itself towards the layout
   */
  public record Link(String key, String href, String label) {}
}
