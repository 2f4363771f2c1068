namespace HintBook.Spoilers.Languages;

/// <summary>Spanish.</summary>
internal static class Spanish
{
    public static SearchLanguage Language { get; } = new()
    {
        Code = "es",
        Clock = ClockWords.Spanish,
        Pieces = PieceWords.Spanish,
        Objects = ObjectWords.Spanish,
        Reckoning = ReckonWords.Spanish,
        Variants =
            "oro/dorado/dorada plata/plateado/plateada madera/maderero cobre/cobrizo/cobriza bronce/broncíneo/broncínea",
        FormsOf = WordForms.Spanish,
        Determiners =
            "el la los las lo un una unos unas este esta estos estas ese esa esos esas aquel aquella "
            + "mi mis tu tus su sus nuestro nuestra vuestro vuestra cada algún alguna",
        Prepositions = "de en con sin sobre bajo para por a hacia desde entre contra tras dentro debajo encima detrás delante",
        Functions =
            "y e o u pero ni si que quien cual cuyo cuando como cómo dónde donde porque qué no nunca nada se me te le les nos os yo tú él ella "
            + "ellos ellas usted ustedes nosotros "
            + "es son era eran será ser está están estaba estar ha han había haber hay hace hacer puede puedes pueden debe debes va vas van ir "
            + "ve mira mirad mire ver toma toma tome coge coja pon ponga "
            + "tira tire empuja empuje gira gire abre abra abrir cierra cierre busca busque encuentra encontrar tiene tienes tenga levanta "
            + "levante desliza deslice aprieta apriete lee lea dice diga "
            + "muestra esconde da dé queda cabe hasta entonces también muy más menos bien ya aún todavía aquí ahí allí luego después antes "
            + "siempre solo sólo todo todos toda todas",
        InNumbers = "y e luego después por fin el la seguido de",
        And = "y",
        Everyday =
            "caja cofre llave tapa puerta cajón pasador agujero rueda botón carta letra número palabra código nota papel madera cerradura "
            + "candado cerrojo pestillo mango pomo bisagra panel lado arriba abajo "
            + "fondo base pie esquina borde pared suelo techo bandeja estuche ranura gancho anillo varilla barra clavija tapón moneda bola "
            + "cadena cuerda hilo muelle resorte imán espejo vidrio cristal imagen "
            + "foto texto línea verso rima acertijo pista respuesta cifra dígito símbolo signo marca flecha color forma estrella círculo "
            + "cuadrado herramienta parte pieza cosa objeto ficha mapa libro página "
            + "etiqueta mesa lámpara vela interruptor esfera reloj aguja mano dedo ojo cabeza cuerpo cola pequeño pequeña grande largo larga "
            + "corto corta redondo redonda plano plana viejo vieja nuevo nueva "
            + "izquierda izquierdo derecha derecho primero primera segundo segunda último última rojo roja azul verde amarillo amarilla blanco "
            + "blanca negro negra secreto secreta oculto oculta interior exterior "
            + "nombre tiempo hora día año orden lugar hueco fin principio paso sonido peso tornillo clavo tabla marco bloque",
        Figures =
        [
            .. Counted("cero uno dos tres cuatro cinco seis siete ocho nueve diez "
                + "once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte "
                + "veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve", 0, 1, FigureKind.Small),
            .. Counted("treinta cuarenta cincuenta sesenta setenta ochenta noventa", 30, 10, FigureKind.Tens),
            ("un", new(1, FigureKind.Small)),
            ("una", new(1, FigureKind.Small)),
            ("veintiún", new(21, FigureKind.Small)),
            ("veintiuna", new(21, FigureKind.Small)),
            ("cien", new(100, FigureKind.Scale)),
            ("ciento", new(100, FigureKind.Scale)),
            .. Counted("doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos", 200, 100, FigureKind.Small),
            .. Counted("doscientas trescientas cuatrocientas quinientas seiscientas setecientas ochocientas novecientas", 200, 100, FigureKind.Small),
            ("mil", new(1000, FigureKind.Scale)),
            ("doble", new(2, FigureKind.Again)),
            ("triple", new(3, FigureKind.Again)),
        ],
        Counting = new(),
        Fold = Fold,
        HeadFirst = true,
        HasFinalAccents = true,
    };

    private static IEnumerable<(string, Figure)> Counted(string words, int from, int step, FigureKind kind) =>
        words.Split(' ').Select((word, i) => (word, new Figure(from + (i * step), kind)));

    // "Llaves" and "relojes" lose as much as "llave" and "reloj" have; "luces" and "luz" meet in "luc".
    private static int Fold(Span<char> word)
    {
        if (word is "del" or "al")
            return word.Length - 1;
        var length = word.Length;
        if (length > 3 && word[length - 1] == 's')
            length--;
        if (length > 3 && word[length - 1] == 'e')
            length--;
        if (length > 2 && word[length - 1] == 'z')
            word[length - 1] = 'c';
        return length;
    }
}
