/** The forms of the stylesheet besides the usual one, as arguments. */
export const forms = [['--unit', 'px'], ['--properties'], ['--layer'], ['--no-comments'], ['--minified'], ['--unit', 'px', '--properties', '--layer', '--minified']];
