/** What every window is made with: menus, buttons, messages and long works. */
package thrumwright.editor.window;
